package heapwright.web.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Forecaster;
import heapwright.advice.TestPile;
import heapwright.advice.winter.Story;
import heapwright.casebook.JudgedCases;
import heapwright.report.Catalogue;
import heapwright.report.Units;
import heapwright.report.Words;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

@DisplayName("The picture of a course that stands alone")
@Tag("thorough")
class CoursePictureTest {

    private final CoursePicture picture =
            new CoursePicture(new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC));

    @Test
    @DisplayName(
            "is well-formed, titled, needs nothing from outside and has all its writing in the box, for each winter case")
    void past() throws IOException, SAXException, ParserConfigurationException {
        for (JudgedCases.Judged judged : JudgedCases.below("winter")) {
            Story story = judged.advice().story().orElseThrow();
            String svg = picture.of(story);
            Document drawn = parse(svg);
            assertEquals(
                    "The course of " + story.model().pile().name(),
                    drawn.getElementsByTagName("title").item(0).getTextContent());
            assertEquals(1, drawn.getElementsByTagName("desc").getLength());
            assertTrue(drawn.getElementsByTagName("circle").getLength() > 0);
            assertFalse(svg.contains("href") || svg.contains("<script") || svg.contains("NaN"));
            assertEquals(1, svg.split("http", -1).length - 1, "only the name space");
            inBox(drawn);
        }
    }

    @Test
    @DisplayName("of what lies ahead has a band, a likely line and a strip, and nothing measured")
    void ahead() throws IOException, SAXException, ParserConfigurationException {
        Forecaster forecaster = new Forecaster(TestPile.KNOWLEDGE);
        for (JudgedCases.Judged judged : JudgedCases.below("winter").subList(0, 5)) {
            Document drawn = parse(
                    picture.of(forecaster.ahead(judged.advice().pile()).orElseThrow(), "a < b & \uFFFE \"c\" \u0007"));
            assertEquals(
                    "a < b & \"c\"",
                    drawn.getElementsByTagName("desc")
                            .item(0)
                            .getTextContent()
                            .replaceAll(" +", " ")
                            .strip());
            assertEquals(1, drawn.getElementsByTagName("polygon").getLength());
            assertEquals(0, drawn.getElementsByTagName("circle").getLength());
            inBox(drawn);
        }
    }

    /** A letter is taken as 0.55 of its size wide, which is about the mean of a sans-serif face. */
    private static void inBox(Document drawn) {
        String[] box = drawn.getDocumentElement().getAttribute("viewBox").split(" ");
        NodeList texts = drawn.getElementsByTagName("text");
        assertTrue(texts.getLength() > 8);
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            double y = Double.parseDouble(text.getAttribute("y"));
            assertTrue(y > 0 && y <= Double.parseDouble(box[3]), text.getTextContent());
            double wide = text.getTextContent().length() * 12 * 0.55;
            assertTrue(
                    !text.getAttribute("text-anchor").isEmpty()
                            || Double.parseDouble(text.getAttribute("x")) + wide <= Double.parseDouble(box[2]),
                    text.getTextContent());
        }
    }

    private static Document parse(String svg) throws IOException, SAXException, ParserConfigurationException {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }
}
