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
        return Stream.of(
                        new SignInPages(desk).routes(), // the door
                        new HomePage(desk).routes(),
                        new PlantDesk(desk, search).routes(),
                        new StockPages(desk, search).routes(),
                        new CallPage(desk, search).routes(),
                        new ImportPages(desk).routes(),
                        new MyPage(desk).routes(),
                        new StaffPages(desk).routes())
                .flatMap(List::stream)
                .toList();
    }
}
