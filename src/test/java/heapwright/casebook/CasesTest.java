package heapwright.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

@DisplayName("The cases")
class CasesTest {

    @TestFactory
    @DisplayName("agree with the advice, but for those that measure it")
    Stream<DynamicTest> agree() {
        return JudgedCases.all().stream()
                .filter(j -> !UnseenCasesTest.measures(j.tested()))
                .map(j -> DynamicTest.dynamicTest(
                        j.tested().says() + " (" + j.tested().file() + ")",
                        () -> assertEquals(
                                List.of(),
                                Verdict.of(j.tested(), j.advice(), j.audit()).misses(),
                                j.tested().file())));
    }

    @Test
    @DisplayName("are there, and each says something else")
    void sayDifferentThings() {
        assertFalse(JudgedCases.all().isEmpty());
        Map<String, String> files = new HashMap<>();
        for (JudgedCases.Judged judged : JudgedCases.all()) {
            String before = files.put(judged.tested().says(), judged.tested().file());
            assertEquals(
                    null,
                    before,
                    judged.tested().file() + " repeats " + judged.tested().says());
        }
    }
}
