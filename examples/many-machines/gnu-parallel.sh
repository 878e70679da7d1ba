#!/usr/bin/env bash
# The parts of sweep.mjs under GNU parallel: on the cores of this machine, or on others with --sshlogin. A part that fails or is killed is computed again, from
# where it stopped. Run in the continuous integration of the library.
set -euo pipefail
here="$(cd "$(dirname "$0")" && pwd)"
parts="${PARTS:-8}"
out="${OUT:-parts}"
mkdir -p "$out"
seq "$parts" | parallel --will-cite --jobs "${JOBS:-100%}" --retries 3 --joblog "$out/joblog.txt" node "$here/sweep.mjs" part {} "$parts" "$out/{}.txt"
node "$here/sweep.mjs" merge "$out/table.csv" $(seq -f "$out/%g.txt" "$parts")
