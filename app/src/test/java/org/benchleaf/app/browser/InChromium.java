package org.benchleaf.app.browser;

import java.util.Optional;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/// Hands tests the machine's Chromium, started once for the whole run; skips them by name where there is none.
///
/// ```
/// @ExtendWith(InChromium.class)
/// class StockPagesTest {
///     @ParameterizedTest @EnumSource(Look.class)
///     void aCountIsWrittenDown(Look look, Chromium chromium) {
///         try (Sight sight = chromium.open(look, address)) {
///             sight.page().getByLabel("Count").fill("12");
///             sight.page().getByRole(AriaRole.BUTTON).click();
///             sight.isSound("stock, after a count");     // axe, no side scrolling, nothing refused or thrown
///         }
///     }
/// }
/// ```
///
/// Put the parameter last; a field is filled in `@BeforeAll void open(Chromium chromium)`.
public final class InChromium implements ExecutionCondition, ParameterResolver {
    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        return Chromium.program()
                .map(found -> ConditionEvaluationResult.enabled("Chromium is " + found))
                .orElseGet(() -> ConditionEvaluationResult.disabled(
                        "pages are looked at with Chromium, which is not installed; see .ci/packages"));
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Chromium.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return Optional.ofNullable(context.getRoot()
                        .getStore(Namespace.create(InChromium.class))
                        .getOrComputeIfAbsent(Chromium.class, started -> Chromium.start(), Chromium.class))
                .orElseThrow();
    }
}
