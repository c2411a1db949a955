package org.benchleaf.app.web.route;

import java.util.regex.Pattern;

/// One address and what it must obey.
///
/// @param path as it stands in an address, with `{name}` for what varies
/// @param mostBytes longest body taken; a longer one is turned away and thrown away
/// @throws IllegalArgumentException when its rules contradict each other
public record Route(
        Verb verb,
        String path,
        Access access,
        Forgery forgery,
        Keeping keeping,
        Headers headers,
        long mostBytes,
        Handler handler) {
    /// Long enough for any form without a file.
    public static final long FORM = 64 * 1024L;

    private static final Pattern PATH = Pattern.compile("/(?:(?:[a-z0-9._-]+|\\{[a-z]+})(?:[/.]|$))*");

    /// What is asked for; whoever may GET may also ask for the headers alone.
    public enum Verb {
        GET,
        POST,
        PUT,
        DELETE
    }

    public Route {
        boolean reads = verb == Verb.GET;
        check(PATH.matcher(path).matches(), path, "has a path that the table does not take");
        check(reads == (forgery == Forgery.READS), path, "must say how forged changes are kept out, and only then");
        switch (access) {
            case Access.Everyone() -> check(reads, path, "is open to everyone and so may only be read");
            case Access.Door() -> {
                check(reads || forgery == Forgery.ORIGIN, path, "is changed by people without a session: ORIGIN");
                check(keeping == Keeping.NEVER, path, "is not for everyone and so is not kept");
            }
            case Access.SignedIn(Right right) -> {
                check(reads || forgery == Forgery.ORIGIN_AND_TOKEN, path, "is changed by a browser: ORIGIN_AND_TOKEN");
                check(isPrivate(keeping), path, "is not for everyone and so is not kept for everyone");
            }
            case Access.Token(Right right) -> {
                check(reads || forgery == Forgery.NO_COOKIE, path, "is changed by a program: NO_COOKIE");
                check(isPrivate(keeping), path, "is not for everyone and so is not kept for everyone");
            }
        }
        check(reads == (mostBytes == 0), path, "takes a body only when it changes something");
    }

    private static boolean isPrivate(Keeping keeping) {
        return keeping == Keeping.NEVER || keeping == Keeping.ASK_FIRST_PRIVATELY;
    }

    private static void check(boolean obeyed, String path, String rule) {
        if (!obeyed) {
            throw new IllegalArgumentException("route " + path + " " + rule);
        }
    }

    /// Something to read.
    public static Route get(String path, Access access, Keeping keeping, Headers headers, Handler handler) {
        return new Route(Verb.GET, path, access, Forgery.READS, keeping, headers, 0, handler);
    }

    /// A form that is sent in; how forged ones are kept out follows from who may send it.
    public static Route post(String path, Access access, Headers headers, Handler handler) {
        return change(Verb.POST, path, access, headers, handler);
    }

    /// Any other change.
    public static Route change(Verb verb, String path, Access access, Headers headers, Handler handler) {
        Forgery forgery = switch (access) {
            case Access.Everyone() -> Forgery.READS;
            case Access.Door() -> Forgery.ORIGIN;
            case Access.SignedIn(Right right) -> Forgery.ORIGIN_AND_TOKEN;
            case Access.Token(Right right) -> Forgery.NO_COOKIE;
        };
        return new Route(verb, path, access, forgery, Keeping.NEVER, headers, FORM, handler);
    }

    /// The same with room for a file.
    public Route upTo(long bytes) {
        return new Route(verb, path, access, forgery, keeping, headers, bytes, handler);
    }
}
