package org.benchleaf.app.web;

/// A page that says one thing.
final class MessagePage {
    private MessagePage() {}

    static String of(String heading, String text, String home) {
        return """
                <!DOCTYPE html>
                <html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
                <title>%1$s</title>
                <style>
                :root { color-scheme: light dark; }
                body { font: 1.1rem/1.5 Georgia, serif; max-width: 34rem; margin: 3rem auto; padding: 0 1rem; }
                h1 { font-weight: 500; }
                </style></head>
                <body><main><h1>%1$s</h1><p>%2$s</p><p><a href="/">%3$s</a></p></main></body></html>
                """.formatted(escaped(heading), escaped(text), escaped(home));
    }

    /// For text between tags and in quoted attributes.
    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
