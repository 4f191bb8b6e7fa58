package slotledger.model.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaceTest {

    /** Column letters as spreadsheet programs show them; XFD is the last column of an .xlsx sheet (ECMA-376). */
    @ParameterizedTest
    @CsvSource({"1, A", "26, Z", "27, AA", "52, AZ", "702, ZZ", "703, AAA", "16384, XFD"})
    void columnsHaveTheLettersASpreadsheetShows(int column, String letters) {
        assertEquals(letters, Place.letters(column));
    }

    @Test
    void isWrittenAsAPersonWouldLookItUp() {
        assertEquals("fleet.xlsx, sheet Lab, row 14, column F (RAM)",
                Place.ofRow("fleet.xlsx", "Lab", 14).atColumn(6, "RAM").toString());
        assertEquals("fleet.csv, line 3", Place.ofRow("fleet.csv", "", 3).toString());
    }
}
