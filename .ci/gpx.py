"""Reads a GPX file with a reader of another house and compares its points with a folder's way points.

python3 gpx.py ROUTE.gpx WAYPOINTS.csv; exit status 1 where they differ.
"""
import csv
import re
import sys

import gpxpy


def degrees(text):
    whole, minutes, letter = re.fullmatch(r"(\d+)°([\d.]+)'([NSEW])", text).groups()
    value = int(whole) + float(minutes) / 60
    return -value if letter in "SW" else value


with open(sys.argv[1], encoding="utf-8") as file:
    found = [point for route in gpxpy.parse(file).routes for point in route.points]
with open(sys.argv[2], encoding="utf-8") as file:
    rows = list(csv.DictReader(line for line in file if not line.startswith("#")))

differ = len(found) != len(rows)
for point, row in zip(found, rows):
    latitude, longitude = (degrees(part) for part in row["position"].split())
    if (
        point.name != row["name"]
        or abs(point.latitude - latitude) > 0.6e-8  # written to 8 decimals
        or abs(point.longitude - longitude) > 0.6e-8
    ):
        print("differs:", point.name, point.latitude, point.longitude, "from", row)
        differ = True
print(len(found), "points read")
sys.exit(differ)
