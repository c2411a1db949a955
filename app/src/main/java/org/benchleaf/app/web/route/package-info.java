/// What every address of the server must obey, written down as values and enforced in one place.
///
/// A page, a form or a feed is a [org.benchleaf.app.web.route.Route]: method, path, who may ask, how a forged form is
/// kept out, how long an answer is kept, which headers it carries, and the handler. `Routes` in `app.web` lists all of
/// them. [org.benchleaf.app.web.route.Router] registers the list and nothing else does; it is also the only package
/// that knows the web framework.
///
/// To add pages elsewhere in `app.web`:
///
/// ```
/// final class StockPages {
///     List<Route> routes() {
///         return List.of(
///             Route.get("/desk/stock", new Access.SignedIn(Right.LOOK), Keeping.NEVER, Headers.PAGE, this::list),
///             Route.post("/desk/stock", new Access.SignedIn(Right.EDIT), Headers.PAGE, this::record));
///     }
///
///     private Reply record(Request request) {
///         Identity who = request.who();                       // the router let nobody else through
///         String lot = request.form("lot").orElse("");
///         return Reply.seeOther("/desk/stock");
///     }
/// }
/// ```
///
/// and one line in `Routes`. A form holds `<input type="hidden" name="form-token" value="...">` with
/// [org.benchleaf.app.web.route.Identity#formToken()]; a script sends the same as the header `Form-Token`. The router
/// checks it, and the Origin, before the handler is called.
@NullMarked
package org.benchleaf.app.web.route;

import org.jspecify.annotations.NullMarked;
