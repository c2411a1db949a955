package org.benchleaf.app.web.route;

/// Who may ask.
public sealed interface Access {
    /// Anybody, without a cookie.
    Access EVERYONE = new Everyone();

    /// Anybody, but only on a line that nobody can listen on: where names and passwords are typed.
    Access DOOR = new Door();

    record Everyone() implements Access {}

    record Door() implements Access {}

    /// A person who signed in with a browser.
    record SignedIn(Right right) implements Access {}

    /// A program with a token in the header `Authorization: Bearer`.
    record Token(Right right) implements Access {}

    /// How it is told in the printed table.
    default String text() {
        return switch (this) {
            case Everyone() -> "everyone";
            case Door() -> "everyone, on a safe line";
            case SignedIn(Right right) -> "signed in: " + right.name().toLowerCase(java.util.Locale.ROOT);
            case Token(Right right) -> "token: " + right.name().toLowerCase(java.util.Locale.ROOT);
        };
    }
}
