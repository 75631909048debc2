#!/usr/bin/env bash
# Sets up what is missing, a browser included, and runs every test. The last line reads "N passed, N failed".
set -euo pipefail
source "$(dirname "${BASH_SOURCE[0]}")/set-up.sh"
exec node_modules/.bin/tsx scripts/run-tests.ts
