package org.benchleaf.app.web;

import java.time.LocalDateTime;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.content.Telling;
import org.benchleaf.search.substitute.PublishedAdvice;

/// Public pages that were made already, for as long as they are true: until the catalog or the shop's table of advice
/// changes, or the minute that they name is over. A page asked for by many at once is made more than once; none waits
/// for another.
final class PageCache {
    private static final int MOST_PAGES = 4000;
    private static final long MOST_BYTES = 64L << 20;
    /// Whoever makes up longer addresses shall not drive out what people ask for.
    private static final int LONGEST_ADDRESS = 300;

    private final Benchleaf benchleaf;
    private final Map<Key, Reply> kept = new LinkedHashMap<>(64, 0.75f, true);
    private Optional<State> state = Optional.empty();
    private long bytes;

    PageCache(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
    }

    /// What every kept page was made from.
    private record State(CatalogRevision revision, LocalDateTime minute, PublishedAdvice advice) {}

    private record Key(String address, Telling telling) {}

    /// The page of this address, kept or made.
    ///
    /// @param telling what the one who asks is told; part of what makes a page another
    Reply page(Request request, Telling telling, Supplier<Reply> make) {
        String address = request.asked();
        if (address.length() > LONGEST_ADDRESS) {
            return make.get();
        }
        State now = new State(benchleaf.catalog().revision(), benchleaf.now(), benchleaf.advice());
        Key key = new Key(address, telling);
        synchronized (this) {
            if (state.filter(now::equals).isEmpty()) {
                kept.clear();
                bytes = 0;
                state = Optional.of(now);
            }
            Reply known = kept.get(key);
            if (known != null) {
                return known;
            }
        }
        Reply made = make.get();
        if (made.status() == 200) {
            keep(now, key, made);
        }
        return made;
    }

    /// Keeps a page unless the catalog went on while it was made.
    private synchronized void keep(State madeFrom, Key key, Reply page) {
        if (state.filter(madeFrom::equals).isEmpty() || kept.putIfAbsent(key, page) != null) {
            return;
        }
        bytes += page.length();
        Iterator<Reply> oldest = kept.values().iterator();
        while ((bytes > MOST_BYTES || kept.size() > MOST_PAGES) && kept.size() > 1) {
            bytes -= oldest.next().length();
            oldest.remove();
        }
    }
}
