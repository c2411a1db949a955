package org.benchleaf.catalog.intake;

/// Which character parts the cells of a file: comma, semicolon, tab or bar, by the heading.
final class Delimiters {
    private static final String CANDIDATES = ",;\t|";

    private Delimiters() {}

    /// `sep=;` as a first line is a spreadsheet program's way to say it.
    static boolean isDeclaration(String firstLine) {
        return firstLine.matches("(?i)\"?sep=.\"?");
    }

    /// @param head the start of the file, at least its first line
    static char of(String head) {
        String first = head.lines().findFirst().orElse("");
        if (isDeclaration(first.strip())) {
            return first.replace("\"", "").strip().charAt(4);
        }
        int[] counts = new int[CANDIDATES.length()];
        boolean quoted = false;
        for (int at = 0; at < head.length(); at++) {
            char c = head.charAt(at);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == '\n' || c == '\r')) {
                break;
            } else if (!quoted && CANDIDATES.indexOf(c) >= 0) {
                counts[CANDIDATES.indexOf(c)]++;
            }
        }
        int best = 0;
        for (int candidate = 1; candidate < counts.length; candidate++) {
            best = counts[candidate] > counts[best] ? candidate : best;
        }
        return CANDIDATES.charAt(best);
    }
}
