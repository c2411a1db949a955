package org.benchleaf.shared.stock;

/// What a shop calls a container class. A class is a range of volumes and no gallon, so that `#3` is
/// called 3 gallon only where the shop says so.
public enum ContainerNaming {
    /// `#3`
    NUMBER,
    /// `3 gal` for the class `#3`; the small classes `#SP1` to `#SP5` keep their marks, for nobody counts
    /// them in gallons.
    GALLON;

    /// A size as this shop writes it.
    public String text(StockSize size) {
        return size instanceof StockSize.Container(ContainerClass of) ? text(of) : size.toString();
    }

    /// A class as this shop writes it.
    public String text(ContainerClass of) {
        boolean small = of.mark().startsWith("#SP");
        return this == GALLON && !small ? of.mark().substring(1) + " gal" : of.mark();
    }
}
