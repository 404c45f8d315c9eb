#!/usr/bin/env bash
# The same tests at their full size: thousands of seeds and kills. Some hours on two cores; the last line counts.
export BAKEHOUSE_LONG=1
exec bash "$(dirname "$0")/all.sh"
