package org.benchleaf.shared.name;

/// Whether a name stands for a hybrid (×) or a graft-chimaera (+): ICN Art. H.1, ICNCP Art. 24.
public enum HybridMark {
    NONE(""),
    HYBRID("×"),
    GRAFT("+");

    private final String sign;

    HybridMark(String sign) {
        this.sign = sign;
    }

    public String sign() {
        return sign;
    }
}
