#!/bin/bash
# One shard of a study for each task of a Slurm job array:
#   sbatch --array=1-16 --export=ALL,PLAN=/shared/plan.json,FOLDER=/shared/results,SHARDS=16 slurm-array.sh
# SHARDS stays what it was when only some tasks are submitted again: --array=3,7 with SHARDS=16.
# SECONDLINE: how the program is called (default: secondline).
#SBATCH --job-name=secondline
#SBATCH --ntasks=1
#SBATCH --cpus-per-task=1
#SBATCH --requeue
#SBATCH --open-mode=append
set -eu
${SECONDLINE:-secondline} study "$PLAN" --out "$FOLDER" --shard "$SLURM_ARRAY_TASK_ID/$SHARDS" --jobs 1 --yes
