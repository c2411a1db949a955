package org.benchleaf.render;

import org.benchleaf.shared.Problem;

/// Something that should be put right before it is on paper.
///
/// @param subject the plant or label it is about
/// @param field what of it, such as `common name`
/// @param problem its sentence says what to do
public record PrintFinding(String subject, String field, Problem problem) {
    /// Why a page was refused.
    public static PrintFinding of(PrintRefused refusal) {
        Problem problem = refusal.problem();
        return new PrintFinding(
                problem.details().getOrDefault("name", problem.details().getOrDefault("read", "")),
                problem.details().getOrDefault("field", fieldOf(problem.key())),
                problem);
    }

    /// A finding about a plant.
    public static PrintFinding of(String subject, String field, Problem problem) {
        return new PrintFinding(subject, field, problem.with("name", subject).with("field", field));
    }

    private static String fieldOf(String key) {
        if (key.startsWith("photograph.")) {
            return "photograph";
        }
        return key.equals("print.code-too-small") ? "code" : "page";
    }
}
