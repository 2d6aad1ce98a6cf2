#!/bin/sh
# A study on one machine, or on several by GNU parallel: sh parallel.sh PLAN.json FOLDER [SHARDS]
# JOBS: how many at a time (default: as many as there are cores). HOSTS: a file for --sshloginfile, with the folder shared by all.
# SECONDLINE: how the program is called (default: secondline). The same call goes on after whatever stopped it.
set -eu
plan=$1
folder=$2
shards=${3:-16}
program=${SECONDLINE:-secondline}

seq "$shards" | parallel --halt soon,fail=1 ${JOBS:+--jobs "$JOBS"} ${HOSTS:+--sshloginfile "$HOSTS"} \
  $program study "$plan" --out "$folder" --shard "{}/$shards" --jobs 1 --yes
$program study merge "$folder" --out "$folder/merged.jsonl" --force
