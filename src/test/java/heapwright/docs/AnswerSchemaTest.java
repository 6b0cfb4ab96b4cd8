package heapwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.advice.Forecaster;
import heapwright.advice.danger.Alarm;
import heapwright.advice.ready.Ready;
import heapwright.advice.season.YearRound;
import heapwright.advice.winter.PileOutlook;
import heapwright.casebook.Case;
import heapwright.casebook.Casebook;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.pile.Place;
import heapwright.process.sanitation.HeatLedger;
import heapwright.report.AdviceJson;
import heapwright.report.Catalogue;
import heapwright.report.ModelJson;
import heapwright.report.ReadyJson;
import heapwright.report.SanitationJson;
import heapwright.report.SeasonJson;
import heapwright.report.Units;
import heapwright.report.Words;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("thorough")
@DisplayName("The schemas of the answers")
class AnswerSchemaTest {

    private static final Path SCHEMAS = Path.of("docs", "schema");

    private final Knowledge knowledge = KnowledgeReader.packed();
    private final Advisor advisor = Advisor.packed(knowledge);
    private final Words words = new Words(knowledge, Catalogue.english(), Units.METRIC);
    private final List<Case> demo = new Casebook(knowledge).below(Path.of("cases", "demo"));

    @Test
    @DisplayName("fit the advice on every demo, with and without its trace")
    void advice() {
        Schema schema = schema("advice.schema.json");
        AdviceJson json = new AdviceJson(words, "test");
        for (Case one : demo) {
            for (boolean trace : new boolean[] {true, false}) {
                String document = json.write(advisor.advise(one.pile()), trace);
                assertEquals(List.of(), schema.validate(document, InputFormat.JSON), one.file());
            }
        }
        assertFalse(demo.isEmpty());
    }

    @Test
    @DisplayName("fit the answer to why on every winter case")
    void why() {
        Schema schema = schema("advice.schema.json");
        AdviceJson json = new AdviceJson(words, "test");
        for (Case one : new Casebook(knowledge).below(Path.of("cases", "winter"))) {
            Advice advice = advisor.advise(one.pile());
            String document = json.write(advice, true);
            assertEquals(List.of(), schema.validate(document, InputFormat.JSON), one.file());
        }
    }

    @Test
    @DisplayName("fit the outlook of every demo, with a recipe or without")
    void outlook() {
        Schema schema = schema("outlook.schema.json");
        ModelJson json = new ModelJson(words, "test");
        Forecaster forecaster = new Forecaster(knowledge);
        for (Case one : demo) {
            PileOutlook ahead = forecaster
                    .ahead(one.pile())
                    .or(() -> forecaster.aheadOfTypical(one.pile()))
                    .orElseThrow();
            assertEquals(List.of(), schema.validate(json.outlook(ahead), InputFormat.JSON), one.file());
        }
    }

    @Test
    @DisplayName("fit the heat ledger of every demo and every case of heat")
    void sanitation() {
        Schema schema = schema("sanitation.schema.json");
        SanitationJson json = new SanitationJson(words, "test");
        List<Case> all = new ArrayList<>(demo);
        all.addAll(new Casebook(knowledge).below(Path.of("cases", "practice", "heat")));
        for (Case one : all) {
            String document = json.write(one.pile(), HeatLedger.of(one.pile(), knowledge));
            assertEquals(List.of(), schema.validate(document, InputFormat.JSON), one.file());
            Optional<Alarm> alarm = advisor.advise(one.pile()).alarm();
            alarm.ifPresent(a -> assertEquals(
                    List.of(), schema.validate(json.alarmed(one.pile(), a), InputFormat.JSON), one.file()));
        }
    }

    @Test
    @DisplayName("fit the answer on ripeness of every demo and every case of it")
    void ready() {
        Schema schema = schema("ready.schema.json");
        ReadyJson json = new ReadyJson(words, "test");
        List<Case> all = new ArrayList<>(demo);
        all.addAll(new Casebook(knowledge).below(Path.of("cases", "ready")));
        for (Case one : all) {
            Advice advice = advisor.diagnose(one.pile());
            String document = advice.alarm()
                    .map(a -> json.alarmed(one.pile(), a))
                    .orElseGet(() -> json.write(Ready.of(advice, knowledge)));
            assertEquals(List.of(), schema.validate(document, InputFormat.JSON), one.file());
        }
    }

    @Test
    @DisplayName("fit the year of every demo and of no pile at all")
    void season() {
        Schema schema = schema("season.schema.json");
        SeasonJson json = new SeasonJson(words, "test");
        LocalDate day = LocalDate.of(2026, 11, 30);
        YearRound any = YearRound.of(Place.unknown(), Container.Kind.UNKNOWN, day, knowledge);
        assertEquals(List.of(), schema.validate(json.write(any, Optional.empty(), day), InputFormat.JSON));
        for (Case one : demo) {
            Pile pile = one.pile();
            String document = advisor.diagnose(pile)
                    .alarm()
                    .map(a -> json.alarmed(pile, a, day))
                    .orElseGet(() -> json.write(
                            YearRound.of(pile.place(), pile.container().kind(), day, knowledge),
                            Optional.of(pile),
                            day));
            assertEquals(List.of(), schema.validate(document, InputFormat.JSON), one.file());
        }
    }

    @Test
    @DisplayName("refuse a document with a field that they do not know")
    void strict() {
        String document =
                new AdviceJson(words, "test").write(advisor.advise(demo.get(0).pile()), false);
        String other = document.replaceFirst("\"headline\"", "\"heading\"");
        assertFalse(
                schema("advice.schema.json").validate(other, InputFormat.JSON).isEmpty());
    }

    private static Schema schema(String name) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Papers.read(SCHEMAS.resolve(name)));
    }
}
