' Does acts on workbooks and tells what one then holds, one line a fact. Put into a module by libreoffice.ts.
Function Opened(path As String) As Object
  Dim hidden(0) As New com.sun.star.beans.PropertyValue
  hidden(0).Name = "Hidden"
  hidden(0).Value = True
  Opened = StarDesktop.loadComponentFromURL(ConvertToURL(path), "_blank", 0, hidden())
End Function

Function Shown(address As Variant) As String
  Shown = address.StartColumn & "," & address.StartRow & "," & address.EndColumn & "," & address.EndRow
End Function

Sub TellCells(sheet As Object, title As String)
  Dim cursor, all, formulas, values, cell, merged, r, c
  cursor = sheet.createCursor()
  cursor.gotoEndOfUsedArea(False)
  all = sheet.getCellRangeByPosition(0, 0, cursor.RangeAddress.EndColumn, cursor.RangeAddress.EndRow)
  formulas = all.getFormulaArray()
  values = all.getDataArray()
  For r = 0 To UBound(formulas)
    For c = 0 To UBound(formulas(r))
      If formulas(r)(c) <> "" Then
        Print #2, "cell|" & title & "|" & r & "|" & c & "|" & formulas(r)(c)
        If Left(formulas(r)(c), 1) = "=" Or Left(formulas(r)(c), 1) = "{" Then
          Print #2, "value|" & title & "|" & r & "|" & c & "|" & values(r)(c)
        End If
      End If
      cell = sheet.getCellByPosition(c, r)
      If cell.IsMerged Then
        merged = sheet.createCursorByRange(cell)
        merged.collapseToMergedArea()
        Print #2, "merged|" & title & "|" & Shown(merged.RangeAddress)
      End If
      If cell.Validation.Type <> com.sun.star.sheet.ValidationType.ANY Then
        Print #2, "choice|" & title & "|" & r & "|" & c & "|" & cell.Validation.getFormula1()
      End If
    Next c
  Next r
End Sub

Sub TellAround(sheet As Object, title As String)
  Dim notes, rules, entry, ranges, one, i, j, areas, words
  notes = sheet.Annotations
  For i = 0 To notes.Count - 1
    one = notes.getByIndex(i)
    Print #2, "note|" & title & "|" & one.Position.Row & "|" & one.Position.Column & "|" & one.String
  Next i
  rules = sheet.ConditionalFormats.getConditionalFormats()
  For i = 0 To UBound(rules)
    words = ""
    For j = 0 To rules(i).Count - 1
      entry = rules(i).getByIndex(j)
      If entry.Type = 0 Then words = words & entry.Formula1 & ";"
    Next j
    areas = rules(i).Range.RangeAddresses
    For j = 0 To UBound(areas)
      Print #2, "rule|" & title & "|" & Shown(areas(j)) & "|" & words
    Next j
  Next i
  areas = sheet.getPrintAreas()
  For i = 0 To UBound(areas)
    Print #2, "printed|" & title & "|" & Shown(areas(i))
  Next i
  If sheet.getPrintTitleRows() Then Print #2, "titles|" & title & "|" & Shown(sheet.getTitleRows())
  For i = 0 To sheet.DrawPage.Count - 1
    one = sheet.DrawPage.getByIndex(i)
    If one.supportsService("com.sun.star.drawing.OLE2Shape") Then
      Print #2, "chart|" & title & "|" & one.Anchor.AbsoluteName
    End If
  Next i
  For i = 0 To sheet.Charts.Count - 1
    one = sheet.Charts.getByIndex(i).EmbeddedObject.getUsedRangeRepresentations()
    For j = 0 To UBound(one)
      Print #2, "drawn|" & title & "|" & one(j)
    Next j
  Next i
End Sub

Sub TellNames(names As Object, place As String)
  Dim i
  For i = 0 To names.Count - 1
    Print #2, "name|" & place & "|" & names.getByIndex(i).Name & "|" & names.getByIndex(i).Content
  Next i
End Sub

Sub Tell(book As Object)
  Dim i, sheet, ranges
  For i = 0 To book.Sheets.Count - 1
    sheet = book.Sheets.getByIndex(i)
    TellCells(sheet, sheet.Name)
    TellAround(sheet, sheet.Name)
    TellHidden(sheet, sheet.Name)
    TellNames(sheet.NamedRanges, sheet.Name)
  Next i
  TellNames(book.NamedRanges, "")
  ranges = book.DatabaseRanges
  For i = 0 To ranges.Count - 1
    Print #2, "range|" & ranges.getByIndex(i).Name & "|" & ranges.getByIndex(i).DataArea.Sheet & "|" & Shown(ranges.getByIndex(i).DataArea)
  Next i
End Sub

Sub Sorted(sheet As Object, parts)
  Dim fields(0) As New com.sun.star.table.TableSortField
  Dim given(1) As New com.sun.star.beans.PropertyValue
  fields(0).Field = CLng(parts(5))
  fields(0).IsAscending = (parts(1) = "sort-up")
  fields(0).IsCaseSensitive = False
  given(0).Name = "SortFields"
  given(0).Value = fields()
  given(1).Name = "ContainsHeader"
  given(1).Value = False
  sheet.getCellRangeByPosition(0, CLng(parts(3)), CLng(parts(6)) - 1, CLng(parts(3)) + CLng(parts(4)) - 1).sort(given())
End Sub

' Every row is shown, and the filters of all blocks are asked which stay so.
Sub FilteredAgain(book As Object)
  Dim i, ranges
  For i = 0 To book.Sheets.Count - 1
    book.Sheets.getByIndex(i).Rows.IsVisible = True
  Next i
  ranges = book.DatabaseRanges
  For i = 0 To ranges.Count - 1
    ranges.getByIndex(i).refresh()
  Next i
End Sub

Sub TellHidden(sheet As Object, title As String)
  Dim cursor, r
  cursor = sheet.createCursor()
  cursor.gotoEndOfUsedArea(False)
  For r = 0 To cursor.RangeAddress.EndRow
    If Not sheet.Rows.getByIndex(r).IsVisible Then Print #2, "hidden|" & title & "|" & r
  Next r
End Sub

Sub Act(sheet As Object, parts)
  On Error Goto Refused
  If Left(parts(1), 4) = "sort" Then Sorted(sheet, parts)
  If parts(1) = "insert-rows" Then sheet.Rows.insertByIndex(CLng(parts(3)), CLng(parts(4)))
  If parts(1) = "delete-rows" Then sheet.Rows.removeByIndex(CLng(parts(3)), CLng(parts(4)))
  If parts(1) = "insert-columns" Then sheet.Columns.insertByIndex(CLng(parts(3)), CLng(parts(4)))
  If parts(1) = "delete-columns" Then sheet.Columns.removeByIndex(CLng(parts(3)), CLng(parts(4)))
  Exit Sub
Refused:
  Print #2, "refused"
End Sub

' What fails is told: a message would wait for somebody to press a key.
Sub Main
  On Error Goto Failed
  Acts
  Exit Sub
Failed:
  Print #2, "failed|" & Error$ & "|" & Erl
  Close
  StarDesktop.terminate()
End Sub

' A line of the list: path|act|sheet|line|count|column|columns, the last two where rows are sorted
Sub Acts
  Dim job As String, parts, book, sheet
  Open "FOLDER/jobs.txt" For Input As #1
  Open "FOLDER/told.txt" For Output As #2
  Do While Not Eof(1)
    Line Input #1, job
    If job <> "" Then
      parts = Split(job, "|")
      Print #2, "book|" & parts(0)
      book = Opened("FOLDER/" & parts(0))
      If parts(1) <> "" Then
        If parts(1) = "filter-again" Then
          FilteredAgain(book)
        Else
          sheet = book.Sheets.getByName(parts(2))
          Act(sheet, parts)
        End If
      End If
      book.calculateAll()
      Tell(book)
      book.close(False)
    End If
  Loop
  Print #2, "end"
  Close #1
  Close #2
End Sub
