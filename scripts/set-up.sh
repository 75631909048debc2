# Sourced by open.sh and test.sh: the right Node, and the packages of package-lock.json.
cd "$(dirname "${BASH_SOURCE[0]}")/.."

if ! command -v node >/dev/null || ! command -v npm >/dev/null; then
  echo 'Umbel needs Node.js 20.19 or newer with npm: https://nodejs.org, or your system'"'"'s package manager.' >&2
  exit 1
fi
if ! node -e 'const [a, b] = process.versions.node.split(".").map(Number); process.exit(a > 20 || (a === 20 && b >= 19) ? 0 : 1)'; then
  echo "Umbel needs Node.js 20.19 or newer; this is $(node --version)." >&2
  exit 1
fi

# npm writes node_modules/.package-lock.json last, so an older one means a missing, stale or broken-off installation.
if [ ! node_modules/.package-lock.json -nt package-lock.json ]; then
  echo 'Installing packages …' >&2
  npm ci --no-audit --no-fund --loglevel=error >&2
fi
