"""Workbooks that other programs make, for the tests of reading and patching. Run from the top folder:

    apt-get install python3-xlsxwriter python3-openpyxl libreoffice-calc
    /usr/bin/python3 tests/second-opinion/xlsx/make.py

It writes tests/second-opinion/xlsx/*.xlsx. XlsxWriter 3.0.2, openpyxl 3.0.9 and LibreOffice 7.4.7 made
those that stand there; the tests read the files and need none of the three. Parts that none of them
writes (threaded comments, a pivot table, slicers, web extensions, prefixed names) are put in by hand.
All lots and figures are of the demonstration co-operative, Saltmarsh Ferries.
"""
import datetime
import io
import os
import subprocess
import sys
import tempfile
import zipfile

import openpyxl
import xlsxwriter
from openpyxl.chart import LineChart, Reference
from openpyxl.comments import Comment
from openpyxl.formatting.rule import CellIsRule
from openpyxl.styles import Alignment, Border, Font, PatternFill, Side
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.table import Table, TableStyleInfo

HERE = os.path.dirname(os.path.abspath(__file__))
LONG_AGO = datetime.datetime(2026, 5, 4)
LOTS = ["Ferry galley", "Pier kitchen", "Customs house", "Harbour inn", "Lock cottage"]
TITRES = [2.35, 3.1, 1.85, 4.2, 2.9]
MASSES = [10.02, 9.98, 10.0, 10.05, 9.97]


def path(name):
    return os.path.join(HERE, name + ".xlsx")


def charts():
    """XlsxWriter: two charts, an image, sparklines, rich text, rules, a table with totals, protection."""
    book = xlsxwriter.Workbook(path("charts"))
    book.set_properties({"created": LONG_AGO})
    sheet = book.add_worksheet("Log book")
    two = book.add_format({"num_format": "0.00"})
    bold = book.add_format({"bold": True, "bg_color": "#DFEAEA", "border": 1})
    date = book.add_format({"num_format": "yyyy-mm-dd"})
    red = book.add_format({"font_color": "#9C0006", "italic": True})
    for column, text in enumerate(["Date", "Lot", "Titre mL", "Mass g", "Acid value"]):
        sheet.write(3, column, text, bold)
    for row, (lot, titre, mass) in enumerate(zip(LOTS, TITRES, MASSES), 4):
        sheet.write_datetime(row, 0, LONG_AGO + datetime.timedelta(row), date)
        sheet.write(row, 1, lot)
        sheet.write(row, 2, titre, two)
        sheet.write(row, 3, mass, two)
        sheet.write_formula(row, 4, f"=56.1*0.1*C{row + 1}/D{row + 1}", two, 56.1 * 0.1 * titre / mass)
    sheet.write_rich_string("A1", bold, "Saltmarsh ", red, "Ferries")
    sheet.merge_range("A2:E2", "Titrations of the season", bold)
    sheet.write_array_formula("H5:H9", "{=C5:C9*2}", two, TITRES[0] * 2)
    for row, titre in enumerate(TITRES[1:], 5):
        sheet.write(row, 7, titre * 2, two)
    sheet.conditional_format("C5:C9", {"type": "cell", "criteria": ">", "value": 4, "format": red})
    sheet.conditional_format("D5:D9", {"type": "data_bar", "data_bar_2010": True})
    sheet.data_validation("B5:B9", {"validate": "list", "source": LOTS})
    sheet.data_validation("C5:C9", {"validate": "decimal", "criteria": "between", "minimum": 0, "maximum": 50})
    sheet.add_sparkline("G5", {"range": "'Log book'!C5:C9", "markers": True})
    sheet.write_comment("C5", "Second burette", {"author": "quay"})
    sheet.write_url("B12", "https://example.org/", string="outside")
    sheet.autofilter("A4:E9")
    sheet.freeze_panes(4, 2)
    sheet.set_column("B:B", 18)
    sheet.set_row(5, 24)
    sheet.set_header("&LTitrations&RPage &P")
    for kind, place in (("line", "J2"), ("scatter", "J20")):
        chart = book.add_chart({"type": kind})
        chart.add_series({
            "name": "Titre", "categories": "='Log book'!$B$5:$B$9", "values": "='Log book'!$C$5:$C$9",
            "trendline": {"type": "linear"}, "y_error_bars": {"type": "standard_error"},
        })
        chart.set_title({"name": "Titre by lot"})
        sheet.insert_chart(place, chart)
    sheet.insert_image("A14", "dot.png", {"image_data": io.BytesIO(one_dot_png())})
    totals = book.add_worksheet("Totals")
    totals.add_table("B2:D7", {
        "name": "Drums", "total_row": True,
        "columns": [
            {"header": "Lot", "total_string": "All"},
            {"header": "Litres", "total_function": "sum"},
            {"header": "Kg", "formula": "=Drums[[#This Row],[Litres]]*0.915"},
        ],
        "data": [["Ferry galley", 25], ["Pier kitchen", 30.5], ["Customs house", 18], ["Harbour inn", 41]],
    })
    totals.protect()
    book.define_name("Density", "=0.915")
    book.define_name("'Totals'!Local", "=Totals!$C$3:$C$6")
    book.close()


def one_dot_png():
    import struct
    import zlib

    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    header = struct.pack(">IIBBBBB", 1, 1, 8, 2, 0, 0, 0)
    return (b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header)
            + chunk(b"IDAT", zlib.compress(b"\x00\x12\x34\x3b")) + chunk(b"IEND", b""))


def dynamic():
    """XlsxWriter: dynamic arrays, LET, a LAMBDA name, the 1904 date system, a table, a chart sheet."""
    book = xlsxwriter.Workbook(path("dynamic"), {"date_1904": True, "use_future_functions": True})
    book.set_properties({"created": LONG_AGO})
    sheet = book.add_worksheet("Lots")
    date = book.add_format({"num_format": "d mmm yyyy"})
    sheet.add_table("A1:C6", {
        "name": "Lots",
        "columns": [{"header": "Lot"}, {"header": "Drawn", "format": date}, {"header": "Titre mL"}],
    })
    for row, (lot, titre) in enumerate(zip(LOTS, TITRES), 1):
        sheet.write(row, 0, lot)
        sheet.write_datetime(row, 1, LONG_AGO + datetime.timedelta(row), date)
        sheet.write(row, 2, titre)
    sheet.write_dynamic_array_formula("H2:H6", "=SORT(C2:C6)", None, 1.85)
    for row, titre in enumerate(sorted(TITRES)[1:], 2):
        sheet.write(row, 7, titre)
    sheet.write_dynamic_array_formula("J2:J2", "=SUM(C2:C6*C2:C6)", None, sum(t * t for t in TITRES))
    sheet.write_formula("L2", "=_xlfn.LET(_xlpm.t,AVERAGE(C2:C6),_xlpm.t*2)", None, 2 * sum(TITRES) / 5)
    sheet.write_formula("L3", "=_xldudf_TITRE_CORRECTED(C2:C6)", None, sum(TITRES) / 5)
    sheet.write_formula("L4", "=STDEV.S(C2:C6)", None, 0.9)
    book.define_name("Doubled", "=_xlfn.LAMBDA(_xlpm.x,_xlpm.x*2)")
    chart = book.add_chart({"type": "column"})
    chart.add_series({"values": "=Lots!$C$2:$C$6"})
    book.add_chartsheet("Picture").set_chart(chart)
    hidden = book.add_worksheet("Settings")
    hidden.write("A1", "Molarity")
    hidden.write("B1", 0.1)
    hidden.hide()
    book.close()


def tidy():
    """openpyxl: a table, merged cells, borders, validation, rules, a comment, a chart, theme colours."""
    book = openpyxl.Workbook()
    book.properties.created = book.properties.modified = LONG_AGO
    sheet = book.active
    sheet.title = "Bob's log, 2026"
    sheet.append(["Lot", "Titre mL", "Mass g", "Acid value"])
    for row, (lot, titre, mass) in enumerate(zip(LOTS, TITRES, MASSES), 2):
        sheet.append([lot, titre, mass, f"=56.1*0.1*B{row}/C{row}"])
    table = Table(displayName="Log", ref="A1:D6")
    table.tableStyleInfo = TableStyleInfo(name="TableStyleMedium9", showRowStripes=True)
    sheet.add_table(table)
    thin = Side(style="thin", color="FF808080")
    for cell in sheet[1]:
        cell.font = Font(bold=True, color="FF12343B", size=12)
        cell.fill = PatternFill("solid", fgColor="FFDFEAEA")
        cell.border = Border(bottom=thin)
        cell.alignment = Alignment(horizontal="center", wrap_text=True)
    for row in range(2, 7):
        sheet.cell(row, 4).number_format = "0.000"
    sheet.merge_cells("A9:C10")
    sheet["A9"] = "Merged"
    sheet["A9"].font = Font(italic=True, name="Courier New")
    rule = DataValidation(type="list", formula1='"yes,no"', allow_blank=True)
    sheet.add_data_validation(rule)
    rule.add("E2:E6")
    sheet.conditional_formatting.add("B2:B6", CellIsRule(operator="greaterThan", formula=["4"], font=Font(color="FFFF0000")))
    sheet["B2"].comment = Comment("Cloudy", "quay")
    sheet.column_dimensions["A"].width = 22.5
    sheet.freeze_panes = "B2"
    chart = LineChart()
    chart.add_data(Reference(sheet, min_col=2, min_row=1, max_row=6), titles_from_data=True)
    sheet.add_chart(chart, "F8")
    other = book.create_sheet("Notes")
    other["A1"] = "  spaces kept  "
    other["A2"] = "two\nlines"
    other["B5"] = "=1/0"
    other["C5"] = True
    other.sheet_state = "veryHidden"
    book.save(path("tidy"))


def office():
    """LibreOffice, from a flat sheet: styles, merged cells, a matrix formula, a name, a rule."""
    rows = "".join(
        f'<table:table-row><table:table-cell office:value-type="string"><text:p>{lot}</text:p></table:table-cell>'
        f'<table:table-cell table:style-name="two" office:value-type="float" office:value="{titre}"/>'
        f'<table:table-cell table:formula="of:=[.B{row}]*2" office:value-type="float" office:value="{titre * 2}"/>'
        "</table:table-row>"
        for row, (lot, titre) in enumerate(zip(LOTS, TITRES), 2)
    )
    flat = f"""<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0"
 xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:number="urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0" xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"
 xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:automatic-styles><number:number-style style:name="n2"><number:number number:decimal-places="2" number:min-integer-digits="1"/></number:number-style>
<style:style style:name="two" style:family="table-cell" style:data-style-name="n2"/>
<style:style style:name="head" style:family="table-cell"><style:table-cell-properties fo:background-color="#dfeaea"/><style:text-properties fo:font-weight="bold"/></style:style></office:automatic-styles>
<office:body><office:spreadsheet><table:table table:name="Sheet of lots">
<table:table-row><table:table-cell table:style-name="head" office:value-type="string"><text:p>Lot</text:p></table:table-cell>
<table:table-cell table:style-name="head" office:value-type="string"><text:p>Titre</text:p></table:table-cell>
<table:table-cell table:style-name="head" office:value-type="string"><text:p>Twice</text:p></table:table-cell></table:table-row>{rows}
<table:table-row table:number-rows-repeated="3"><table:table-cell/></table:table-row>
<table:table-row><table:table-cell table:number-columns-spanned="2" table:number-rows-spanned="1" office:value-type="string"><text:p>Merged</text:p></table:table-cell><table:covered-table-cell/>
<table:table-cell table:number-matrix-columns-spanned="1" table:number-matrix-rows-spanned="1" table:formula="of:=SUM([.B2:.B6]*[.B2:.B6])" office:value-type="float" office:value="{sum(t * t for t in TITRES)}"/></table:table-row>
</table:table><table:named-expressions><table:named-range table:name="Titres" table:base-cell-address="$'Sheet of lots'.$A$1" table:cell-range-address="$'Sheet of lots'.$B$2:.$B$6"/></table:named-expressions></office:spreadsheet></office:body></office:document>"""
    with tempfile.TemporaryDirectory() as folder:
        with open(os.path.join(folder, "office.fods"), "w", encoding="utf-8") as out:
            out.write(flat)
        subprocess.run(
            ["soffice", f"-env:UserInstallation=file://{folder}/profile", "--headless", "--convert-to", "xlsx",
             "--outdir", HERE, os.path.join(folder, "office.fods")],
            check=True, stdout=subprocess.DEVNULL,
        )


def rebuilt(source, target, change):
    """A copy of a workbook with its parts, a dictionary of name to bytes, changed by hand."""
    with zipfile.ZipFile(source) as given:
        parts = {name: given.read(name) for name in given.namelist()}
    change(parts)
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as made:
        for name, content in parts.items():
            made.writestr(zipfile.ZipInfo(name, (2026, 5, 4, 8, 0, 0)), content, zipfile.ZIP_DEFLATED)


def put(parts, name, before, added):
    text = parts[name].decode("utf-8")
    assert before in text, (name, before)
    parts[name] = text.replace(before, added + before, 1).encode("utf-8")


def part(parts, name, content_type, text):
    parts[name] = ('<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' + text).encode("utf-8")
    if content_type:
        put(parts, "[Content_Types].xml", "</Types>", f'<Override PartName="/{name}" ContentType="{content_type}"/>')


def related(parts, name, kind, target):
    text = parts[name].decode("utf-8")
    number = text.count("<Relationship ") + 1
    put(parts, name, "</Relationships>", f'<Relationship Id="rIdH{number}" Type="{kind}" Target="{target}"/>')
    return f"rIdH{number}"


OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
SHEETML = "application/vnd.openxmlformats-officedocument.spreadsheetml."


def threaded():
    """Threaded comments and their persons, a web extension, custom XML, a calculation chain."""
    def change(parts):
        rels = "xl/worksheets/_rels/sheet1.xml.rels"
        thread = "http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"
        part(parts, "xl/threadedComments/threadedComment1.xml", "application/vnd.ms-excel.threadedcomments+xml",
             f'<ThreadedComments xmlns="{thread}"><threadedComment ref="B2" dT="2026-05-04T08:00:00.00" personId="{{11111111-1111-1111-1111-111111111111}}" id="{{22222222-2222-2222-2222-222222222222}}"><text>Cloudy</text></threadedComment></ThreadedComments>')
        related(parts, rels, "http://schemas.microsoft.com/office/2017/10/relationships/threadedComment", "../threadedComments/threadedComment1.xml")
        part(parts, "xl/persons/person.xml", "application/vnd.ms-excel.person+xml",
             f'<personList xmlns="{thread}"><person displayName="Quay" id="{{11111111-1111-1111-1111-111111111111}}" userId="quay" providerId="None"/></personList>')
        related(parts, "xl/_rels/workbook.xml.rels", "http://schemas.microsoft.com/office/2017/10/relationships/person", "persons/person.xml")
        part(parts, "xl/webextensions/taskpanes.xml", "application/vnd.ms-office.webextensiontaskpanes+xml",
             '<wetp:taskpanes xmlns:wetp="http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11"/>')
        part(parts, "xl/webextensions/webextension1.xml", "application/vnd.ms-office.webextension+xml",
             '<we:webextension xmlns:we="http://schemas.microsoft.com/office/webextensions/webextension/2010/11" id="{33333333-3333-3333-3333-333333333333}"/>')
        related(parts, "_rels/.rels", "http://schemas.microsoft.com/office/2011/relationships/webextensiontaskpanes", "xl/webextensions/taskpanes.xml")
        part(parts, "customXml/item1.xml", None, "<kept xmlns='urn:saltmarsh'>by hand</kept>")
        part(parts, "xl/calcChain.xml", SHEETML + "calcChain+xml",
             f'<calcChain xmlns="{MAIN}"><c r="D2" i="1" l="1"/><c r="D3"/><c r="D4"/><c r="D5"/><c r="D6"/><c r="B5" i="2"/></calcChain>')
        related(parts, "xl/_rels/workbook.xml.rels", OFFICE + "/calcChain", "calcChain.xml")
    rebuilt(path("tidy"), path("threaded"), change)


def pivot():
    """A pivot table with its cache, and a slicer with its cache."""
    def change(parts):
        fields = "".join(f'<cacheField name="{name}" numFmtId="0"><sharedItems{kind}/></cacheField>' for name, kind in (
            ("Lot", ' count="5"'), ("Titre mL", ' containsSemiMixedTypes="0" containsString="0" containsNumber="1" minValue="1.85" maxValue="4.2"'),
            ("Mass g", ' containsSemiMixedTypes="0" containsString="0" containsNumber="1" minValue="9.97" maxValue="10.05"'),
            ("Acid value", ' containsSemiMixedTypes="0" containsString="0" containsNumber="1" minValue="1" maxValue="3"')))
        items = "".join(f'<s v="{lot}"/>' for lot in LOTS)
        fields = fields.replace('<sharedItems count="5"/>', f'<sharedItems count="5">{items}</sharedItems>')
        records = "".join(f'<r><x v="{index}"/><n v="{titre}"/><n v="{mass}"/><n v="{5.61 * titre / mass!r}"/></r>'
                          for index, (titre, mass) in enumerate(zip(TITRES, MASSES)))
        part(parts, "xl/pivotCache/pivotCacheRecords1.xml", SHEETML + "pivotCacheRecords+xml",
             f'<pivotCacheRecords xmlns="{MAIN}" count="5">{records}</pivotCacheRecords>')
        part(parts, "xl/pivotCache/pivotCacheDefinition1.xml", SHEETML + "pivotCacheDefinition+xml",
             f'<pivotCacheDefinition xmlns="{MAIN}" xmlns:r="{OFFICE}" r:id="rId1" refreshedBy="quay" refreshedDate="46146" createdVersion="6" refreshedVersion="6" minRefreshableVersion="3" recordCount="5"><cacheSource type="worksheet"><worksheetSource name="Log"/></cacheSource><cacheFields count="4">{fields}</cacheFields></pivotCacheDefinition>')
        parts["xl/pivotCache/_rels/pivotCacheDefinition1.xml.rels"] = (
            f'<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="{OFFICE}/pivotCacheRecords" Target="pivotCacheRecords1.xml"/></Relationships>').encode()
        cache = related(parts, "xl/_rels/workbook.xml.rels", OFFICE + "/pivotCacheDefinition", "pivotCache/pivotCacheDefinition1.xml")
        put(parts, "xl/workbook.xml", "</workbook>", f'<pivotCaches><pivotCache cacheId="7" xmlns:r="{OFFICE}" r:id="{cache}"/></pivotCaches>')
        rows = "".join(f'<i><x{f" v=" + chr(34) + str(i) + chr(34) if i else ""}/></i>' for i in range(5)) + '<i t="grand"><x/></i>'
        axis = "".join(f'<item x="{i}"/>' for i in range(5)) + '<item t="default"/>'
        part(parts, "xl/pivotTables/pivotTable1.xml", SHEETML + "pivotTable+xml",
             f'<pivotTableDefinition xmlns="{MAIN}" name="ByLot" cacheId="7" dataOnRows="0" dataCaption="Values" createdVersion="6" updatedVersion="6" minRefreshableVersion="3"><location ref="H1:I7" firstHeaderRow="1" firstDataRow="1" firstDataCol="1"/><pivotFields count="4"><pivotField axis="axisRow" showAll="0"><items count="6">{axis}</items></pivotField><pivotField dataField="1" showAll="0"/><pivotField showAll="0"/><pivotField showAll="0"/></pivotFields><rowFields count="1"><field x="0"/></rowFields><rowItems count="6">{rows}</rowItems><colItems count="1"><i/></colItems><dataFields count="1"><dataField name="Sum of Titre mL" fld="1" baseField="0" baseItem="0"/></dataFields></pivotTableDefinition>')
        parts["xl/pivotTables/_rels/pivotTable1.xml.rels"] = (
            f'<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="{OFFICE}/pivotCacheDefinition" Target="../pivotCache/pivotCacheDefinition1.xml"/></Relationships>').encode()
        related(parts, "xl/worksheets/_rels/sheet1.xml.rels", OFFICE + "/pivotTable", "../pivotTables/pivotTable1.xml")
        slicers = "http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"
        part(parts, "xl/slicers/slicer1.xml", "application/vnd.ms-excel.slicer+xml",
             f'<slicers xmlns="{slicers}"><slicer name="Lot" cache="Slicer_Lot" caption="Lot" rowHeight="241300"/></slicers>')
        part(parts, "xl/slicerCaches/slicerCache1.xml", "application/vnd.ms-excel.slicerCache+xml",
             f'<slicerCacheDefinition xmlns="{slicers}" name="Slicer_Lot" sourceName="Lot"/>')
        related(parts, "xl/worksheets/_rels/sheet1.xml.rels", "http://schemas.microsoft.com/office/2007/relationships/slicer", "../slicers/slicer1.xml")
        related(parts, "xl/_rels/workbook.xml.rels", "http://schemas.microsoft.com/office/2007/relationships/slicerCache", "slicerCaches/slicerCache1.xml")
    rebuilt(path("tidy"), path("pivot"), change)


def prefixed():
    """By hand: prefixed names, rows and cells without addresses, shared formulas, shared and inline texts."""
    parts = {}
    head = '<?xml version="1.0" encoding="utf-8"?>'
    package = "http://schemas.openxmlformats.org/package/2006/"
    parts["[Content_Types].xml"] = (
        f'{head}<Types xmlns="{package}content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="{SHEETML}sheet.main+xml"/>'
        + "".join(f'<Override PartName="/xl/{name}" ContentType="{SHEETML}{kind}+xml"/>' for name, kind in (
            ("worksheets/sheet1.xml", "worksheet"), ("styles.xml", "styles"), ("sharedStrings.xml", "sharedStrings"), ("calcChain.xml", "calcChain")))
        + "</Types>")
    parts["_rels/.rels"] = f'{head}<Relationships xmlns="{package}relationships"><Relationship Id="R1" Type="{OFFICE}/officeDocument" Target="/xl/workbook.xml"/></Relationships>'
    parts["xl/workbook.xml"] = f'{head}<x:workbook xmlns:x="{MAIN}" xmlns:q="{OFFICE}"><x:workbookPr date1904="0"/><x:sheets><x:sheet name="Data" sheetId="4" q:id="R1"/></x:sheets><x:calcPr calcId="191029"/></x:workbook>'
    parts["xl/_rels/workbook.xml.rels"] = f'{head}<Relationships xmlns="{package}relationships">' + "".join(
        f'<Relationship Id="R{number}" Type="{OFFICE}/{kind}" Target="{target}"/>' for number, (kind, target) in enumerate((
            ("worksheet", "worksheets/sheet1.xml"), ("styles", "/xl/styles.xml"), ("sharedStrings", "./sharedStrings.xml"), ("calcChain", "calcChain.xml")), 1)) + "</Relationships>"
    parts["xl/styles.xml"] = f'{head}<x:styleSheet xmlns:x="{MAIN}"><x:fonts count="1"><x:font><x:sz val="10"/><x:name val="Arial"/></x:font></x:fonts><x:fills count="2"><x:fill><x:patternFill patternType="none"/></x:fill><x:fill><x:patternFill patternType="gray125"/></x:fill></x:fills><x:borders count="1"><x:border/></x:borders><x:cellStyleXfs count="1"><x:xf/></x:cellStyleXfs><x:cellXfs count="2"><x:xf/><x:xf numFmtId="2" applyNumberFormat="1"><x:alignment horizontal="right"/></x:xf></x:cellXfs></x:styleSheet>'
    parts["xl/sharedStrings.xml"] = f'{head}<x:sst xmlns:x="{MAIN}" count="2" uniqueCount="2"><x:si><x:t>Lot</x:t></x:si><x:si><x:r><x:t>Tit</x:t></x:r><x:r><x:t xml:space="preserve">re </x:t></x:r><x:rPh sb="0" eb="1"><x:t>not this</x:t></x:rPh></x:si></x:sst>'
    rows = "".join(
        f'<x:row r="{row}" spans="1:4"><x:c r="A{row}" t="inlineStr"><x:is><x:t>{lot}</x:t></x:is></x:c><x:c r="B{row}" s="1"><x:v>{titre}</x:v></x:c>'
        + (f'<x:c r="C{row}" s="1"><x:f t="shared" ref="C3:C7" si="0">B{row}*$B$3+1</x:f><x:v>{titre * TITRES[0] + 1}</x:v></x:c>' if row == 3
           else f'<x:c r="C{row}" s="1"><x:f t="shared" si="0"/><x:v>{titre * TITRES[0] + 1}</x:v></x:c>')
        + "</x:row>"
        for row, (lot, titre) in enumerate(zip(LOTS, TITRES), 3))
    parts["xl/worksheets/sheet1.xml"] = (
        f'{head}<x:worksheet xmlns:x="{MAIN}"><x:dimension ref="A1:C7"/><x:cols><x:col min="2" max="5" width="12.5" style="1" customWidth="1"/></x:cols><x:sheetData>'
        f'<x:row><x:c t="s"><x:v>0</x:v></x:c><x:c t="s"><x:v>1</x:v></x:c><x:c t="b"><x:v>1</x:v></x:c></x:row>{rows}<x:row r="9" ht="20" customHeight="1"/></x:sheetData></x:worksheet>')
    parts["xl/calcChain.xml"] = f'{head}<x:calcChain xmlns:x="{MAIN}">' + "".join(f'<x:c r="C{row}"' + (' i="4"' if row == 3 else "") + "/>" for row in range(3, 8)) + "</x:calcChain>"
    with open(path("prefixed"), "wb") as out:
        # Not seekable, so that sizes stand behind the data, as streaming writers leave them.
        with zipfile.ZipFile(Unseekable(out), "w", zipfile.ZIP_DEFLATED) as made:
            for name, text in parts.items():
                made.writestr(zipfile.ZipInfo(name, (2026, 5, 4, 8, 0, 0)), text.encode("utf-8"), zipfile.ZIP_DEFLATED)


class Unseekable:
    def __init__(self, out):
        self.out = out

    def write(self, data):
        return self.out.write(data)

    def flush(self):
        self.out.flush()


if __name__ == "__main__":
    wanted = sys.argv[1:] or ["charts", "dynamic", "tidy", "office", "threaded", "pivot", "prefixed"]
    for each in wanted:
        globals()[each]()
