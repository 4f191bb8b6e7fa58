package slotledger.intake.internal.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slotledger.model.finding.Finding;

class CsvFileTest {

    @TempDir
    private Path folder;

    private Path file(String text, Charset charset) throws IOException {
        return Files.write(folder.resolve("list.csv"), text.getBytes(charset));
    }

    private String read(String text) throws Exception {
        return Told.of(file(text, StandardCharsets.UTF_8)).toString();
    }

    @Test
    void theSheetHasNoName() throws Exception {
        Told told = Told.of(file("a,b\n", StandardCharsets.UTF_8));
        assertEquals("", told.sheet().name);
        assertEquals(1, told.sheets.size());
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void theUsualDelimitersAreFound(String delimiter) throws Exception {
        assertEquals("1: A=Asset B=RAM C=Price\n2: A=1 B=8 GB C=12\n3: A=2 C=13\n",
                read("Asset,RAM,Price\r\n1,8 GB,12\r\n2,,13\r\n".replace(",", delimiter)));
    }

    @Test
    void decimalCommasDoNotPassForDelimiters() throws Exception {
        assertEquals("1: A=8,5 B=12,3 C=1,25\n2: A=9,5 B=13,3 C=2,25\n", read("8,5;12,3;1,25\n9,5;13,3;2,25\n"));
        assertEquals("1: A=Part B=Price\n2: A=8 GB, DDR4, 2666 B=12,30\n3: A=4 GB, DDR3, 1600 B=8,10\n",
                read("Part;Price\n8 GB, DDR4, 2666;12,30\n4 GB, DDR3, 1600;8,10\n"));
        assertEquals("1: A=1 B=2 C=3\n2: A=4 B=5 C=6\n", read("1,2,3\n4,5,6\n"));
    }

    @Test
    void delimitersAndLineEndsInsideQuotesAreText() throws Exception {
        assertEquals("1: A=Asset B=Note\n2: A=1 B=two;\nlines; \"quoted\"\n5: A=2 B=x\n",
                read("Asset,Note\n1,\"two;\nlines; \"\"quoted\"\"\"\n\n2,x\n"));
    }

    @Test
    void titlesAndBlankLinesDoNotMisleadAndKeepTheirLineNumbers() throws Exception {
        assertEquals("1: A=Fleet of the school, spring\n4: A=Asset B=RAM\n5: A=1 B=8\n6: A=2 B=4\n",
                read("Fleet of the school, spring\n\n;;\nAsset;RAM\n1;8\n2;4\n"));
    }

    @Test
    void lineNumbersAreThoseOfTheFile() throws Exception {
        assertEquals("1: A=a B=b\n2: A=1\r\n\r\n2 B=3\n5: A=4 B=5\n", read("a,b\r\n\"1\r\n\r\n2\",3\r\n4,5"));
        assertEquals("1: A=a B=b\n3: A=c B=d\n", read("a,b\r\rc,d\r"));
    }

    @Test
    void anApostropheThatGuardsAgainstFormulasIsNoPartOfTheText() throws Exception {
        assertEquals("1: A=tag B=note\n2: A==U-1 B='quoted'\n3: A=-5 B='\n",
                read("tag,note\n'=U-1,'quoted'\n'-5,'\n"));
    }

    @Test
    void aSeparatorLineDecides() throws Exception {
        assertEquals("2: A=a,b,c B=1\n3: A=d,e,f B=2\n", read("sep=;\r\na,b,c;1\r\nd,e,f;2\r\n"));
        assertEquals("2: A=a B=1\n", read("\"sep=|\"\na|1\n"));
    }

    @Test
    void aColumnByItselfNeedsNoDelimiter() throws Exception {
        assertEquals("1: A=Asset\n2: A=PC 1\n", read("Asset\nPC 1\n"));
    }

    @Test
    void inchMarksInsideAValueAreText() throws Exception {
        assertEquals("1: A=Model B=RAM\n2: A=Slim 15\" B=8\n", read("Model,RAM\nSlim 15\",8\n"));
    }

    @Test
    void spacesAroundQuotesDoNotMatter() throws Exception {
        assertEquals("1: A=a, b B=c\n", read("\"a, b\" , \"c\"\n"));
    }

    @ParameterizedTest
    @CsvSource({"UTF-8,''", "UTF-8,EFBBBF", "UTF-16LE,FFFE", "UTF-16BE,FEFF", "UTF-16LE,''", "UTF-16BE,''",
        "windows-1252,''"})
    void theEncodingIsFound(String name, String mark) throws Exception {
        byte[] text = "Ger\u00e4t;RAM\r\nB\u00fcro \u20ac;8 GB\r\n".getBytes(Charset.forName(name));
        byte[] start = java.util.HexFormat.of().parseHex(mark);
        byte[] all = java.util.Arrays.copyOf(start, start.length + text.length);
        System.arraycopy(text, 0, all, start.length, text.length);
        Path file = Files.write(folder.resolve("list.csv"), all);
        assertEquals("1: A=Ger\u00e4t B=RAM\n2: A=B\u00fcro \u20ac B=8 GB\n", Told.of(file).toString());
    }

    @Test
    void aLetterFarDownStillDecidesTheEncoding() throws Exception {
        String text = "Asset;RAM\n" + "PC;8 GB\n".repeat(50_000) + "B\u00fcro;8 GB\n";
        for (Charset charset : new Charset[] {StandardCharsets.UTF_8, TextCharset.WINDOWS_1252}) {
            assertEquals("B\u00fcro", Told.of(file(text, charset)).sheet().text(50_002, 1), charset.name());
        }
    }

    @Test
    void lettersAcrossTheBordersOfBuffersAreWhole() throws Exception {
        for (int shift = 0; shift < 4; shift++) {
            String text = "x".repeat(65_533 + shift) + "\uD83D\uDE00\u00e9,b\n";
            assertEquals(text.substring(0, text.length() - 3),
                    Told.of(file(text, StandardCharsets.UTF_8)).sheet().text(1, 1));
        }
    }

    @Test
    void aQuoteThatIsNeverClosedNamesItsLine() throws Exception {
        Finding finding = Told.refusal(file("a,b\n1,2\n\"3,4\n5,6\n", StandardCharsets.UTF_8));
        assertEquals("quote-not-closed", finding.code());
        assertEquals(OptionalInt.of(3), finding.place().row());
    }

    @Test
    void textBehindAClosingQuoteNamesItsLine() throws Exception {
        String text = "a,b\n1,2\n\"15\" wide\",4\n" + "5,6\n".repeat(9_000);
        Finding finding = Told.refusal(file(text, StandardCharsets.UTF_8));
        assertEquals("quote-misplaced", finding.code());
        assertEquals(OptionalInt.of(3), finding.place().row());
    }

    @Test
    void anOpenQuoteInALargeFileDoesNotFillTheMemory() throws Exception {
        Finding finding = Told.refusal(file("a,b\n\"1,2\n" + "3,4\n".repeat(5_000_000), StandardCharsets.UTF_8));
        assertEquals("file-too-large", finding.code());
        assertEquals(OptionalInt.of(2), finding.place().row());
    }

    @Test
    void zeroBytesNameTheirLine() throws Exception {
        Finding finding = Told.refusal(file("a,b\n1,2\n3,\0\0\0\n", StandardCharsets.UTF_8));
        assertEquals("text-has-zero-bytes", finding.code());
        assertEquals(OptionalInt.of(3), finding.place().row());
        assertTrue(finding.toString().contains("list.csv, line 3"), finding.toString());
    }

    @Test
    void longLinesAreRead() throws Exception {
        String value = "x".repeat(32_767);
        Told told = Told.of(file((value + ",").repeat(100) + "end\n1,2\n", StandardCharsets.UTF_8));
        assertEquals("end", told.sheet().text(1, 101));
        assertEquals("2", told.sheet().text(2, 2));
    }

    @Test
    void moreValuesThanColumnsAreRefused() throws Exception {
        assertEquals("file-too-large", Told.refusal(file(",".repeat(20_000) + "x\n", StandardCharsets.UTF_8)).code());
    }
}
