#!/usr/bin/env bash
# The parts of sweep.mjs as a Slurm job array, then the merge. The library's CI runs it on a Slurm of one node, where that starts. Read it before you submit it.
#
#   jobs=$(sbatch --parsable slurm-array.sh)
#   sbatch --dependency=afterok:"$jobs" --wrap 'node sweep.mjs merge table.csv $(seq -f "parts/%g.txt" 8)'
#
#SBATCH --job-name=leg-sweep
#SBATCH --array=1-8
#SBATCH --ntasks=1
#SBATCH --cpus-per-task=1
#SBATCH --time=01:00:00
#SBATCH --requeue
set -euo pipefail
# As in --array above. A part that was lost with its node is sent again alone (sbatch --array=3 slurm-array.sh) and goes on where its file ends.
parts=8
mkdir -p parts
srun node sweep.mjs part "$SLURM_ARRAY_TASK_ID" "$parts" "parts/$SLURM_ARRAY_TASK_ID.txt"
