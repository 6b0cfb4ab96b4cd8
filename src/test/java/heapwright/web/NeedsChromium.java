package heapwright.web;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Skips the tests of a class where there is no Chromium, and says so; where one is demanded, its absence fails them. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsChromium.Condition.class)
@interface NeedsChromium {

    String MISSING = "No Chromium was found: install it (Debian: apt-get install chromium) or name it with -D"
            + Chrome.PLACE + "=/path/to/chromium";

    /** A build server sets the variable CI; by hand it is {@code -Dchromium.demanded=true}. */
    final class Condition implements ExecutionCondition {

        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            if (Chrome.found().isPresent()) {
                return ConditionEvaluationResult.enabled("Chromium is here");
            }
            if (demanded()) {
                throw new IllegalStateException(MISSING);
            }
            System.out.println(context.getDisplayName() + " is skipped. " + MISSING + ".");
            return ConditionEvaluationResult.disabled(MISSING);
        }

        static boolean demanded() {
            String ci = System.getenv().getOrDefault("CI", "");
            return Boolean.getBoolean("chromium.demanded") || !ci.isBlank() && !ci.equalsIgnoreCase("false");
        }
    }
}
