package org.benchleaf.shared.name;

import java.util.regex.Pattern;

/// A species epithet or one below it, with its hybrid mark when it is a nothospecies.
///
/// @param mark NONE or HYBRID
/// @param text lower-case Latin, hyphen allowed: `rubrum`, `novae-angliae`
public record Epithet(HybridMark mark, String text) {
    private static final Pattern LATIN = Pattern.compile("\\p{Ll}+(?:-\\p{Ll}+)*");

    public Epithet {
        if (mark == HybridMark.GRAFT || !LATIN.matcher(text).matches()) {
            throw new IllegalArgumentException("not an epithet: " + mark.sign() + text);
        }
    }

    public static Epithet of(String text) {
        return new Epithet(HybridMark.NONE, text);
    }
}
