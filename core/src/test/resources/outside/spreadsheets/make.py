"""Makes the workbooks beside it: Python 3.11, openpyxl 3.1.5. All animals are invented."""
import datetime
from openpyxl import Workbook

def book(name, sheets):
    wb = Workbook()
    wb.remove(wb.active)
    for title, rows, state in sheets:
        ws = wb.create_sheet(title)
        ws.sheet_state = state
        for row in rows:
            ws.append(row)
    return wb, name

wb, name = book("plain.xlsx", [
    ("Notes", [], "visible"),
    ("Bones", [
        ["animal", "taxon", "element", "side", "remarks", "GL [mm]", "Bd [mm]"],
        [7, "Ovis aries", "humerus", "left", datetime.date(2019, 5, 3), 140.1, "29,5"],
        [],
        ["KV-2", "Capra hircus", "humerus", "right", None, 0.1 + 0.2 + 132, None],
    ], "visible"),
    ("Old", [["animal"], ["X"]], "hidden"),
])
wb["Bones"]["A2"].number_format = "0000"
wb.save(name)

wb, name = book("two-sheets.xlsx", [
    ("Sheep", [["animal", "taxon", "element", "GL"], ["A", "Ovis aries", "humerus", 140]], "visible"),
    ("Goats", [["animal", "taxon", "element", "GL"], ["B", "Capra hircus", "humerus", 130]], "visible"),
])
wb.save(name)

wb, name = book("wrong.xlsx", [
    ("Bones", [
        ["animal", "taxon", "element", "GL [mm]", "Bd [mm]"],
        ["A", "Ovis aries", "humerus", datetime.date(2024, 12, 3), "wide"],
        [datetime.date(2024, 3, 12), "Ovis aries", "humerus", "#DIV/0!", True],
        ["C", "Ovis aries", "humerus", "=2*70", 30, 31],
    ], "visible"),
])
wb["Bones"]["D3"].data_type = "e"
wb.save(name)

wb, name = book("titled.xlsx", [
    ("Bones", [
        ["Sheep and goats of the invented house"],
        ["measured 2024 by nobody", None, "all in cm"],
        [],
        ["Specimen", "Species", "element", "GL [cm]"],
        ["A", "Ovis aries", "humerus", 14.0],
        ["B", "Capra hircus", "humerus", 13.0],
    ], "visible"),
])
wb.save(name)
