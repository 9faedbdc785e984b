"""Makes shared.xlsx: Python 3.11, XlsxWriter (shared texts, formulas with their last value)."""
import xlsxwriter

wb = xlsxwriter.Workbook("shared.xlsx")
ws = wb.add_worksheet("Shelf 2019")
ws.write_row(0, 0, ["animal", "taxon", "element", "measurement", "value", "unit"])
ws.write_row(1, 0, ["A", "Ovis aries", "humerus", "GL"])
ws.write_formula(1, 4, "=2*70.25", None, 140.5)
ws.write(1, 5, "mm")
ws.write_row(2, 0, ["A", "Ovis aries", "humerus", "Bd", 3.05, "cm"])
wb.close()
