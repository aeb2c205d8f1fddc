package org.layshaft.web.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.fit.CrossTable;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SetShape;
import org.layshaft.web.Demo;

class CrossCsvTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            third pair          | third pair
            third pair, 37/34   | "third pair, 37/34"
            the "late" pair     | "the ""late"" pair"
            =1+1                | '=1+1
            +49                 | '+49
            -3                  | '-3
            @SUM(A1)            | '@SUM(A1)
            =A1,B1              | "'=A1,B1"
            """)
    void everyCellIsTextAndStaysOne(String name, String written) {
        PartSet set = new PartSet("X-1", name, SetShape.PAIR, Map.of("gear", "X-2", "mate", "X-3"), false, false, "");
        CrossTable table = new CrossTable(
                List.of(set), List.of(Demo.desk().parts().counter().boxes().get("curlew-early")), Map.of());

        assertEquals(
                "set,name,shape,build,layout,box,verdict,places tried,at\r\nX-1," + written
                        + ",pair,curlew-early,curlew,\"Curlew, first generation\",no place,0,\r\n",
                CrossCsv.of(table));
    }

    @Test
    void aLineBreakStaysWithinItsCell() {
        PartSet set = new PartSet("X-1", "a\nb", SetShape.PAIR, Map.of(), false, false, "");
        CrossTable table = new CrossTable(
                List.of(set), List.of(Demo.desk().parts().counter().boxes().get("curlew-early")), Map.of());

        assertEquals("X-1,\"a\nb\",pair", CrossCsv.of(table).split("\r\n")[1].substring(0, 14));
    }
}
