package org.benchleaf.app.web.staff;

import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Route;

/// Every address that is for staff.
public final class StaffRoutes {
    private StaffRoutes() {}

    public static List<Route> of(Benchleaf benchleaf) {
        Desk desk = new Desk(benchleaf);
        PlantSearch search = new PlantSearch(benchleaf);
        ChangedPages changed = new ChangedPages(desk);
        return Stream.of(
                        new SignInPages(desk).routes(), // the door
                        new HomePage(desk, changed).routes(),
                        new PlantDesk(desk, search).routes(),
                        new StockPages(desk, search).routes(),
                        new CallPage(desk, search).routes(),
                        new ListPages(desk).routes(),
                        new PrintPages(desk).routes(),
                        changed.routes(),
                        new ImportPages(desk).routes(),
                        new MyPage(desk).routes(),
                        new StaffPages(desk).routes(),
                        new ShopPages(desk).routes(),
                        new RulesPages(desk).routes(),
                        new BackupPages(desk).routes(),
                        new HealthPage(desk).routes())
                .flatMap(List::stream)
                .toList();
    }
}
