#!/usr/bin/env python3
"""Fills the dates of a demo source.

The sources are templates: their dates hang on day 0, the day of the operation.

    python3 fill.py TEMPLATE OUT --day-zero 2030-01-31

@DAY0@          day 0; @DAY0+58@ is day 58
@LAST_DAY@      the last day of week n; the template says `# weeks: n`
@REVIEW_BY@     the last day of week n; the template says `# review week: n`
@SIGNERS_FROM@  60 days before day 0
"""

import argparse
import datetime
import pathlib
import re


def last_day_of_week(day_zero, week):
    """Week 1 is days 0 to 6."""
    return day_zero + datetime.timedelta(days=7 * week - 1)


def dates(template, day_zero):
    """Every placeholder that the template can use, with its date."""
    found = {"DAY0": day_zero, "SIGNERS_FROM": day_zero - datetime.timedelta(days=60)}
    for name, remark in (("LAST_DAY", "weeks"), ("REVIEW_BY", "review week")):
        week = re.search(rf"^# {remark}: (\d+)$", template, re.MULTILINE)
        if week:
            found[name] = last_day_of_week(day_zero, int(week[1]))
    return found


def fill(template, day_zero):
    known = dates(template, day_zero)

    def date(placeholder):
        name = placeholder[1]
        if placeholder[2]:
            return (day_zero + datetime.timedelta(days=int(placeholder[2]))).isoformat()
        if name not in known:
            raise SystemExit(f"no date is known for @{name}@")
        return known[name].isoformat()

    return re.sub(r"@([A-Z0-9_]+)(?:\+(\d+))?@", date, template)


def main():
    parser = argparse.ArgumentParser(description="Fills the dates of a demo source.")
    parser.add_argument("template", type=pathlib.Path)
    parser.add_argument("out", type=pathlib.Path)
    parser.add_argument("--day-zero", type=datetime.date.fromisoformat, required=True, metavar="YYYY-MM-DD")
    args = parser.parse_args()
    filled = fill(args.template.read_text(encoding="utf-8"), args.day_zero)
    args.out.write_text(filled, encoding="utf-8")


if __name__ == "__main__":
    main()
