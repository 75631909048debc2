/** The six questions, a page each; the first is the one that opens. */
export const pages = [
  { id: 'air', name: 'Air', question: 'Is the blower big enough?' },
  { id: 'pulses', name: 'Pulses', question: 'How are the pulses spread over the turn?' },
  { id: 'breathing', name: 'Breathing', question: 'Which cylinder gets most, and which least?' },
  { id: 'heat', name: 'Heat', question: 'Which cylinder gives its walls most heat?' },
  { id: 'output', name: 'Output', question: 'What does it give, and where does the fuel go?' },
  { id: 'fit', name: 'Fit', question: 'Does it go together?' },
] as const;

export type PageId = (typeof pages)[number]['id'];

/** The page that an address names after its `#`; the first one where it names none. */
export const pageOf = (hash: string): PageId => pages.find(({ id }) => hash === `#${id}`)?.id ?? pages[0].id;
