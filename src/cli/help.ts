/** What `--help` prints. */
export const HELP = `Umbel: will the blower feed it? A cycle model for blown radial two-strokes.

  umbel point FILE --speed 6000 [--throttle 80%] [--set path=value …] [--json]
      one operating point, solved until it repeats
  umbel sweep FILE --speed 1000:9000:500 [--throttle 80%] [--set path=value …] [--json | --csv]
      points from : to : step; the report adds cranking speed
  umbel geometry FILE [--set path=value …] [--json]
      strokes, dead centres and port timing of every cylinder
  umbel check FILE [--set path=value …]
      says everything that is wrong with a design file, and what is unusual
  umbel air FILE [--speed 1000:9000:500] [--throttle 80%] [--set path=value …] [--json]
      is the blower big enough, what limits it, does boost stay in; cranking is always among the speeds
  umbel match FILE --target deliveryRatio=1.2 --speed 6000 [--vary blower.driveRatio …] [--throttle 80%] [--json]
      what would close the gap: each thing solved by itself, with its cost, or why it cannot. Targets: deliveryRatio,
      chargingEfficiency, plenumPressure (above ambient, as 0.3bar); with --speed from:to:step, at every speed
  umbel pulses FILE --speed 6000 [--throttle 80%] [--set path=value …] [--json]
      when every cylinder fires and opens, torque over a turn with its harmonics, speed fluctuation, loads on pins,
      bearings, shafts and teeth, counterweights and what still shakes: numbers for whoever checks the strength
  umbel even FILE --speed 6000 [--means barrel,exhaustTrim,transferTrim] [--step barrel=0.1mm …] [--limit barrel=0:1mm …]
      [--weigh timing=1 …] [--tolerance trappedMass=1% …] [--throttle 80%] [--set path=value …] [--json]
      how unequal the cylinders are and why, which runs hottest, and a shop list that evens them out. Means: knuckle,
      knuckleRadius, rod, barrel, exhaustTrim, transferTrim, head; aims: timing, compression, trappedMass
  umbel even FILE --speed 6000 --alternatives [--by torqueRipple] [--grouping 1,1,2,2] [--json]
      throws, staggers, collectors and rotor phases, ranked. By: largestGap, torqueRipple, chargeSpread, worstBackflow,
      pinImbalance, hiddenBarrels; a grouping of one's own names a collector for every cylinder
  umbel even FILE --speed 6000 --reach [--json]
      whose exhaust reaches whom: what the blowdown of each cylinder does to every other
  umbel fit FILE [--set path=value …] [--json]
      does it go together: clearances of barrels, skirts, rods, knuckle eyes, crowns and rows over a whole turn, each with
      its tolerance, where and at which crank angle; outer size against the space there is
  umbel rotors FILE [--speed 9000] [--svg OUT] [--dxf OUT] [--set path=value …] [--json]
      rotors before metal: mesh, displacement, leaks, ripple, inertia, growth by heat; drawn in true size
  umbel blowers FILE --speed 6000 [--throttle 80%] [--set path=value …] [--json]
      Roots, internal compression and centrifugal on this engine, delivering alike there: cranked, there and at top speed
  umbel leak FILE --speed 1000 --holds 0.1bar [--gas 20C] [--set path=value …] [--json]
      the clearance of one blower, from what it holds against a closed outlet at a speed of its rotors
  umbel start FILE [--speed 300] [--throttle 80%] [--warm] [--set path=value …] [--json]
      cranked from rest turn by turn: torque, plenum, mixture on its way, and the turn in which it catches
  umbel turns FILE --speed 1500 [--throttle 20%] [--turns 60] [--rest] [--set path=value …] [--json]
      followed turn by turn: which turns fire in which cylinder, whether it four-strokes, burned gas at every spark
  umbel spark FILE --speed 6000 [--throttle 80%] [--integral 0.9] [--set path=value …] [--json]
      what an even cam is off by in every cylinder and costs; the spark of most torque, and the most that the octane number allows
  umbel backfire FILE [--speed 6000] [--throttle 80%] [--crankcase 600cc] [--holds 1bar] [--set path=value …] [--json]
      mixture between throttle and cylinders, pressures if it burned, relief it would take, throttle snapped shut
  umbel walls FILE [--speed 6000] [--crown 280C] [--coating] [--throttle 80%] [--set path=value …] [--json]
      what crowns, heads and liners come to, where their heat goes, how they warm and stand still; the air that holds a
      limit (--crown, --head or --liner), and what a ceramic layer on the crowns would do
  umbel batch STUDY.jsonl [--jobs N] [--shard 3/8] [--out FILE]
      many designs, one in each line, answered line by line in STUDY.answers.jsonl; run again after a break, it goes on.
      N threads, by default one fewer than there are cores; a shard is one part of so many: docs/batch.md

FILE is a design file, or the name of a preset such as lovage-7.

Quantities take units: 6000rpm, 100rev/s, 80%, 3.2in, 45cc, 5psi, 0,85. Bare numbers mean rpm for a speed,
a fraction for the throttle (0 shut, 1 open), and the unit in the key for a value that is set:
  --set cylinder.bore=42mm --set blower.gears[0].driver=40 --set corrections[A3].barrel=0.5mm --set restrictor=none

Leaves 0 if solved, 1 if a point has no answer, parts collide or a line of a study is at fault (the reason is told),
2 if the input is wrong.

What comes out is an estimate; it cannot know pressure waves, jets, local hot spots or fatigue. A plenum full of
mixture can explode, rotating parts need containment, fuel burns. Local rules and licensed or experienced practice
come first, before anything is built or run.
`;
