package org.benchleaf.app.web.route;

/// How a change that another site's page tries to make in somebody's name is kept out.
public enum Forgery {
    /// Changes nothing.
    READS("reads only"),
    /// The page that sends it is ours: the header Origin names this server.
    ORIGIN("origin"),
    /// The same, and it knows the token that only a page made for this session knows.
    ORIGIN_AND_TOKEN("origin and form token"),
    /// No cookie counts, so nobody can be made to send it.
    NO_COOKIE("no cookie counts");

    private final String text;

    Forgery(String text) {
        this.text = text;
    }

    /// How it is told in the printed table.
    public String text() {
        return text;
    }
}
