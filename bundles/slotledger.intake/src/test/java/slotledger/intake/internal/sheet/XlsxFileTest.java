package slotledger.intake.internal.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class XlsxFileTest {

    @TempDir
    private Path folder;

    private Told read(HandmadeXlsx workbook) throws Exception {
        return Told.of(workbook.write(folder.resolve("book.xlsx")));
    }

    @Test
    void sharedTextsComeWithoutTheirFormattingAndWithoutPhoneticRuns() throws Exception {
        Told told = read(HandmadeXlsx.ofRows("""
                <row><c t="s"><v>0</v></c><c t="s"><v>1</v></c><c t="s"><v>2</v></c></row>""")
                .strings("""
                        <si><t>Asset</t></si>\
                        <si><r><rPr><b/></rPr><t>DDR4</t></r><r><t xml:space="preserve"> 8 GB</t></r></si>\
                        <si><t>\u6771\u4eac</t><rPh sb="0" eb="2"><t>\u30c8\u30a6</t></rPh>\
                        <phoneticPr fontId="1"/></si>"""));
        assertEquals("1: A=Asset B=DDR4 8 GB C=\u6771\u4eac\n", told.toString());
    }

    @Test
    void inlineTextsAreTexts() throws Exception {
        assertEquals("1: A=one B=two runs C=in v\n", read(HandmadeXlsx.ofRows("""
                <row r="1"><c r="A1" t="inlineStr"><is><t>one</t></is></c>\
                <c r="B1" t="inlineStr"><is><r><t>two</t></r><r><t xml:space="preserve"> runs</t></r></is></c>\
                <c r="C1" t="inlineStr"><v>in v</v></c></row>""")).toString());
    }

    @Test
    void escapedCharactersAreThemselves() throws Exception {
        Told told = read(HandmadeXlsx.ofRows("""
                <row><c t="inlineStr"><is><t>\
                a_x000D_b_x005F_x0041_ _x00zz_ _x41_ &lt;&#x1F600;&amp;</t></is></c></row>"""));
        assertEquals("a\rb_x0041_ _x00zz_ _x41_ <\uD83D\uDE00&", told.sheet().text(1, 1));
    }

    @Test
    void numbersAreAsAPersonSeesThem() throws Exception {
        String[][] pairs = {
            {"8", "8"}, {"8.0", "8"}, {"0.1", "0.1"}, {"0.10000000000000001", "0.1"}, {"0.30000000000000004", "0.3"},
            {"1E21", "1E+21"}, {"1E+21", "1E+21"}, {"-0", "0"}, {"-2.5", "-2.5"}, {"007", "7"}, {"133.25", "133.25"},
            {"1.50", "1.5"}, {"123456789012345", "123456789012345"}, {"25.600000000000001", "25.6"}, {" 16 ", "16"},
            {".5", "0.5"}, {"5.", "5"}, {"1e3", "1000"}};
        StringBuilder row = new StringBuilder();
        StringBuilder expected = new StringBuilder("1:");
        for (int i = 0; i < pairs.length; i++) {
            row.append("<c><v>").append(pairs[i][0]).append("</v></c>");
            expected.append(' ').append((char) ('A' + i)).append("/N=").append(pairs[i][1]);
        }
        assertEquals(expected + "\n", read(HandmadeXlsx.ofRows("<row>" + row + "</row>")).toString());
    }

    @Test
    void booleansAndErrorsAreTold() throws Exception {
        assertEquals("1: A/B=TRUE B/B=FALSE C/E=#REF! D/E=#N/A\n", read(HandmadeXlsx.ofRows("""
                <row r="1"><c t="b"><v>1</v></c><c t="b"><v>0</v></c><c t="e"><v>#REF!</v></c>\
                <c t="e"><f>NA()</f><v>#N/A</v></c></row>""")).toString());
    }

    @Test
    void aFormulaGivesItsStoredResult() throws Exception {
        assertEquals("1: A/N=12 B=yes\n", read(HandmadeXlsx.ofRows("""
                <row r="1"><c><f>4+8</f><v>12</v></c><c t="str"><f>IF(1,"yes","")</f><v>yes</v></c>\
                <c t="str"><f>""</f><v></v></c></row>""")).toString());
    }

    @Test
    void aFormulaWithoutAStoredResultIsNeverTakenForEmpty() throws Exception {
        assertEquals("1: A/E==SUM(B1:C1) B/E==\u2026\n", read(HandmadeXlsx.ofRows("""
                <row r="1"><c><f>SUM(B1:C1)</f></c><c><f t="shared" si="0"/><v/></c></row>""")).toString());
    }

    @Test
    void datesAreToldByTheirNumberFormat() throws Exception {
        Told told = read(HandmadeXlsx.ofRows("""
                <row><c s="0"><v>45352</v></c><c s="1"><v>45352.604166666664</v></c>\
                <c s="2"><v>0.35416666666666669</v></c>\
                <c s="3"><v>45352</v></c><c s="0"><v>1</v></c><c s="0"><v>-5</v></c><c t="d"><v>2024-03-01</v></c>\
                <c t="d"><v>2024-03-01T14:30:00Z</v></c></row>""")
                .styles("dd/mm/yyyy", "[$-409]d-mmm-yy h:mm AM/PM;@", "h:mm", "0.00"));
        assertEquals("1: A/D=2024-03-01 B/D=2024-03-01 14:30 C/D=08:30 D/N=45352 E/D=1900-01-01 F/N=-5"
                + " G/D=2024-03-01 H/D=2024-03-01 14:30\n", told.toString());
        assertEquals(45352, told.sheet().cell(1, 7).number());
    }

    @Test
    void builtInDateFormatsNeedNoText() throws Exception {
        assertEquals("1: A/N=45352 B/D=2024-03-01\n", read(HandmadeXlsx.ofRows("""
                <row><c><v>45352</v></c><c s="1"><v>45352</v></c></row>""").part("xl/styles.xml", """
                <styleSheet><cellXfs><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs></styleSheet>""")).toString());
    }

    @Test
    void daysOfAMacWorkbookCountFrom1904() throws Exception {
        HandmadeXlsx workbook = HandmadeXlsx.ofRows("<row><c s=\"0\"><v>43890</v></c><c s=\"0\"><v>0</v></c></row>")
                .styles("yyyy-mm-dd").part("xl/workbook.xml", """
                        <workbook xmlns:r="%s"><workbookPr date1904="true"/>\
                        <sheets><sheet name="Data" r:id="r1"/></sheets></workbook>""".formatted(HandmadeXlsx.LINKS));
        Told told = read(workbook);
        assertEquals("1: A/D=2024-03-01 B/D=1904-01-01\n", told.toString());
        assertEquals(45352, told.sheet().cell(1, 1).number());
    }

    @Test
    void unitsLeadingZerosAndPercentagesOfAFormatAreSeen() throws Exception {
        String[][] formats = {
            {"0 \"GB\"", "8", "8 GB"}, {"#,##0\\ \"MB\"", "8192", "8192 MB"}, {"00000", "42", "00042"},
            {"0%", "0.05", "5%"}, {"[$\u20ac-407] #,##0.00", "12.5", "\u20ac 12.5"},
            {"#,##0.00 [$EUR]", "12.5", "12.5 EUR"},
            {"_-* #,##0.00\\ \"\u20ac\"_-", "-3", "-3 \u20ac"}, {"0.00", "3.14159", "3.14159"}, {"@", "8", "8"},
            {"[<1000]0\" MB\";0.0,\" GB\"", "8192", "8192"}, {"0.0,", "8192", "8192"}, {"# ?/?", "0.5", "0.5"},
            {"General\" GB\"", "16", "16 GB"}, {"000-000", "123456", "123456"}, {"0.00E+00", "8", "8"},
            {"[Red]0\" W\"", "65", "65 W"}, {"\"PC-\"0000", "7", "PC-0007"}};
        StringBuilder row = new StringBuilder("<row>");
        StringBuilder expected = new StringBuilder("1:");
        String[] codes = new String[formats.length];
        for (int i = 0; i < formats.length; i++) {
            codes[i] = formats[i][0];
            row.append("<c s=\"").append(i).append("\"><v>").append(formats[i][1]).append("</v></c>");
            expected.append(' ').append((char) ('A' + i)).append("/N=").append(formats[i][2]);
        }
        assertEquals(expected + "\n", read(HandmadeXlsx.ofRows(row + "</row>").styles(codes)).toString());
    }

    @Test
    void cellsAndRowsWithoutNamesFollowEachOther() throws Exception {
        assertEquals("1: A/N=1 B/N=2\n5: D/N=3 E/N=4\n6: A/N=5\n", read(HandmadeXlsx.ofRows("""
                <row><c><v>1</v></c><c><v>2</v></c></row><row r="5"><c r="D5"><v>3</v></c><c><v>4</v></c></row>\
                <row><c><v>5</v></c></row>""")).toString());
    }

    @Test
    void ofTwoCellsInOnePlaceTheLaterHoldsAndDisorderIsPutRight() throws Exception {
        assertEquals("1: A/N=3 B/N=4 C/N=1\n", read(HandmadeXlsx.ofRows("""
                <row r="1"><c r="C1"><v>1</v></c><c r="A1"><v>2</v></c><c r="A1"><v>3</v></c>\
                <c r="B1"><v>4</v></c></row>"""))
                .toString());
    }

    @Test
    void aWrongDimensionIsIgnored() throws Exception {
        assertEquals("9: XFD/N=1\n", read(HandmadeXlsx.ofSheet("""
                <worksheet><dimension ref="A1:B2"/>\
                <sheetData><row r="9"><c r="XFD9"><v>1</v></c></row></sheetData></worksheet>"""))
                .toString());
    }

    @Test
    void hiddenColumnsRowsAndMergedRangesAreTold() throws Exception {
        Told.Sheet sheet = read(HandmadeXlsx.ofSheet("""
                <worksheet><cols><col min="2" max="3" hidden="1"/><col min="5" max="5" width="0"/>\
                <col min="6" max="6"/></cols>\
                <sheetData><row r="1" hidden="1"><c r="A1"><v>1</v></c></row>\
                <row r="2"><c r="A2"><v>2</v></c></row></sheetData>\
                <mergeCells count="2"><mergeCell ref="A1:C1"/><mergeCell ref="B2:B4"/></mergeCells>\
                <extLst><ext><mergeCell ref="nonsense"/></ext></extLst></worksheet>""")).sheet();
        assertEquals(Set.of(2, 3, 5), sheet.hiddenColumns);
        assertEquals(Set.of(1), sheet.hiddenRows);
        assertEquals(List.of(new CellRange(1, 1, 1, 3), new CellRange(2, 2, 4, 2)), sheet.merged);
    }

    @Test
    void sheetsComeInTheOrderOfTheirTabsWithoutCharts() throws Exception {
        HandmadeXlsx workbook = new HandmadeXlsx(HandmadeXlsx.MAIN, HandmadeXlsx.LINKS)
                .part("xl/workbook.xml", """
                        <x:workbook xmlns:x="m" xmlns:rel="%s"><x:sheets><x:sheet name="Second file" rel:id="b"/>\
                        <x:sheet name="Chart" rel:id="c"/>\
                        <x:sheet name="First &amp; hidden" state="veryHidden" rel:id="a"/></x:sheets></x:workbook>"""
                        .formatted(HandmadeXlsx.LINKS))
                .part("xl/_rels/workbook.xml.rels", """
                        <Relationships><Relationship Id="a" Type="x/worksheet" Target="/xl/worksheets/Sheet1.xml"/>\
                        <Relationship Id="b" Type="x/worksheet" Target="worksheets\\sheet2.xml"/>\
                        <Relationship Id="c" Type="x/chartsheet" Target="chartsheets/sheet1.xml"/></Relationships>""")
                .part("xl/worksheets/sheet1.xml", "<worksheet><sheetData/></worksheet>")
                .part("xl/worksheets/sheet2.xml", """
                        <x:worksheet xmlns:x="m"><x:sheetData>\
                        <x:row><x:c><x:v>7</x:v></x:c></x:row></x:sheetData></x:worksheet>""");
        Told told = read(workbook);
        assertEquals(List.of("Second file", "First & hidden"), told.sheets.stream().map(sheet -> sheet.name).toList());
        assertFalse(told.sheets.get(0).hidden);
        assertTrue(told.sheets.get(1).hidden);
        assertEquals("1: A/N=7\n", told.toString());
    }

    @Test
    void theStrictNamespaceIsReadAlike() throws Exception {
        HandmadeXlsx workbook = new HandmadeXlsx(HandmadeXlsx.STRICT_MAIN, HandmadeXlsx.STRICT_LINKS)
                .part("xl/worksheets/sheet1.xml", """
                        <worksheet xmlns="%s"><sheetData>\
                        <row r="1"><c r="A1" t="s"><v>0</v></c></row></sheetData></worksheet>"""
                        .formatted(HandmadeXlsx.STRICT_MAIN)).strings("<si><t>strict</t></si>");
        assertEquals("1: A=strict\n", read(workbook).toString());
    }

    @Test
    void aPartMayBeInUtf16() throws Exception {
        HandmadeXlsx workbook = HandmadeXlsx.ofRows("<row><c t=\"s\"><v>0</v></c></row>")
                .part("xl/sharedStrings.xml", """
                        <?xml version="1.0" encoding="UTF-16"?><sst><si><t>B\u00fcro</t></si></sst>"""
                        .getBytes(StandardCharsets.UTF_16));
        assertEquals("1: A=B\u00fcro\n", read(workbook).toString());
    }

    @Test
    void aCellMayBeFull() throws Exception {
        String full = "\u00e9".repeat(32_767);
        Told told = read(HandmadeXlsx.ofRows("""
                <row><c t="s"><v>0</v></c><c t="inlineStr"><is><t>%s</t></is></c></row>""".formatted(full))
                .strings("<si><t>%s</t></si>".formatted(full)));
        assertEquals(full, told.sheet().text(1, 1));
        assertEquals(full, told.sheet().text(1, 2));
    }

    @Test
    void aMillionEmptyRowsTellNothing() throws Exception {
        StringBuilder rows = new StringBuilder("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>");
        for (int i = 2; i <= 1_048_576; i++) {
            rows.append("<row r=\"").append(i).append("\" s=\"1\" customFormat=\"1\"/>");
        }
        assertEquals("1: A/N=1\n", read(HandmadeXlsx.ofRows(rows.toString())).toString());
    }

    @Test
    void aWorkbookNeedsNeitherTextsNorStylesNorAMainRelationship() throws Exception {
        assertEquals("1: A/N=1\n", read(HandmadeXlsx.ofRows("<row><c s=\"4\"><v>1</v></c></row>")
                .without("xl/sharedStrings.xml").without("xl/styles.xml").without("_rels/.rels")
                .part("xl/_rels/workbook.xml.rels", """
                        <Relationships><Relationship Id="r1" Type="x/worksheet" Target="worksheets/sheet1.xml"/>\
                        </Relationships>""")).toString());
    }

    @Test
    void anyEndingOfTheNameWillDo() throws Exception {
        Path file = HandmadeXlsx.ofRows("<row><c><v>1</v></c></row>").write(folder.resolve("export.csv"));
        assertTrue(Files.exists(file));
        assertEquals("1: A/N=1\n", Told.of(file).toString());
    }
}
