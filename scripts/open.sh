#!/usr/bin/env bash
# Sets up what is missing, builds the app, serves it on this machine and opens it on its example.
set -euo pipefail
source "$(dirname "${BASH_SOURCE[0]}")/set-up.sh"
exec node_modules/.bin/tsx scripts/open.ts "$@"
