#!/usr/bin/env bash
# The parts of sweep.mjs as a Slurm job array, then the merge. NOT RUN in the continuous integration of the library: read it before you submit it.
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
mkdir -p parts
# A part that was killed with its node goes on where its file ends.
srun node sweep.mjs part "$SLURM_ARRAY_TASK_ID" "$SLURM_ARRAY_TASK_COUNT" "parts/$SLURM_ARRAY_TASK_ID.txt"
