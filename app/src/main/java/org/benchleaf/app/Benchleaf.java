package org.benchleaf.app;

import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.benchleaf.app.service.Backups;
import org.benchleaf.app.service.ContactSheetService;
import org.benchleaf.app.service.DocumentService;
import org.benchleaf.app.service.FileShelf;
import org.benchleaf.app.service.ImportService;
import org.benchleaf.app.service.InsteadWords;
import org.benchleaf.app.service.ListChecks;
import org.benchleaf.app.service.ListService;
import org.benchleaf.app.service.MapShelf;
import org.benchleaf.app.service.OriginalFinder;
import org.benchleaf.app.service.OwnAdvice;
import org.benchleaf.app.service.PageLinker;
import org.benchleaf.app.service.PhotoFolder;
import org.benchleaf.app.service.PlantFinder;
import org.benchleaf.app.service.PrintService;
import org.benchleaf.app.service.PrintTasks;
import org.benchleaf.app.service.ReferencePlants;
import org.benchleaf.app.service.Reprints;
import org.benchleaf.app.service.SaleRuleService;
import org.benchleaf.app.service.SheetAssembler;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.NewestImport;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.accounts.Accounts;
import org.benchleaf.catalog.audit.Audit;
import org.benchleaf.catalog.audit.AuditSums;
import org.benchleaf.catalog.audit.PlantAudit;
import org.benchleaf.catalog.intake.ShopHabits;
import org.benchleaf.catalog.lists.PlantLists;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.names.OlderNames;
import org.benchleaf.catalog.prints.PrintLedger;
import org.benchleaf.catalog.walk.Bulletins;
import org.benchleaf.catalog.walk.CropWalks;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.DeskPages;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.Printer;
import org.benchleaf.render.ReportPages;
import org.benchleaf.render.WebPages;
import org.benchleaf.render.page.Shop;
import org.benchleaf.search.NeedSearch;
import org.benchleaf.search.PlantsAtHand;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.search.names.NameIndex;
import org.benchleaf.search.need.NeedReader;
import org.benchleaf.search.need.PostalZones;
import org.benchleaf.search.pairing.CompanionFinder;
import org.benchleaf.search.pairing.PartnerFinder;
import org.benchleaf.search.substitute.PublishedAdvice;
import org.benchleaf.search.substitute.SubstituteFinder;
import org.benchleaf.shared.rule.Destination;
import org.jspecify.annotations.Nullable;

/// One open workspace: every service is made here and nowhere else. What is costly to open, the index, is
/// opened when first asked for, so that printing one sheet does not wait for it.
public final class Benchleaf implements AutoCloseable {
    private final Workspace workspace;
    private final Settings settings;
    private final Clock clock;
    private final Catalog catalog;
    private final ContentPack content;
    private final LogoFile logo;
    private final FileShelf<ReferencePlants> references;
    private final FileShelf<PublishedAdvice> advice;
    private @Nullable PlantIndex index;
    private @Nullable Wording wording;
    private @Nullable Accounts accounts;
    private @Nullable NeedSearch needSearch;
    private @Nullable PlantsAtHand plantsAtHand;
    private @Nullable SubstituteFinder substitutes;
    private @Nullable NameBook nameBook;
    private CatalogRevision namesAsOf = new CatalogRevision(-1);

    private Benchleaf(Workspace workspace, Settings settings, Clock clock) {
        this.workspace = workspace;
        this.settings = settings;
        this.clock = clock;
        this.catalog = Catalog.open(workspace.catalog(settings), clock);
        this.content = ContentPack.withShopFolder(workspace.contentFolder());
        this.logo = new LogoFile(workspace, settings.choices().look());
        this.references = new FileShelf<>(workspace.referenceFile(), ReferencePlants::read);
        this.advice = new FileShelf<>(workspace.insteadFile(), this::advice);
        catalog.prefer(settings.choices().sources());
    }

    /// Opens an existing workspace.
    ///
    /// @param clock says what today is
    public static Benchleaf open(Path folder, Clock clock) {
        Workspace workspace = Workspace.at(folder);
        return new Benchleaf(workspace, Settings.read(workspace.settingsFile()), clock);
    }

    public Settings settings() {
        return settings;
    }

    public Workspace workspace() {
        return workspace;
    }

    public CatalogView catalog() {
        return catalog.view();
    }

    public StockLedger ledger() {
        return catalog.ledger();
    }

    /// Who may sign in.
    public synchronized Accounts accounts() {
        if (accounts == null) {
            accounts = catalog.accounts();
        }
        return accounts;
    }

    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /// The shop's own time, without fractions of a minute.
    public LocalDateTime now() {
        return LocalDateTime.now(clock).withSecond(0).withNano(0);
    }

    /// Where the shop's days begin and end.
    public ZoneId zone() {
        return clock.getZone();
    }

    public Locale language() {
        return settings.language();
    }

    /// Read once: every page asks for it.
    public synchronized Wording wording() {
        if (wording == null) {
            wording = Wording.open(
                    content,
                    settings.language(),
                    settings.lengths(),
                    settings.choices().containers());
        }
        return wording;
    }

    /// The words of an answer in a language; those of the shop where it is the shop's own.
    public Wording wording(Locale language) {
        return language.equals(settings.language())
                ? wording()
                : Wording.open(
                        content,
                        language,
                        settings.lengths(),
                        settings.choices().containers());
    }

    public PrintStyle style() {
        return new PrintStyle(
                settings.language(), settings.lengths(), settings.choices().containers());
    }

    /// The index, opened at the first call and caught up with the catalog.
    public synchronized PlantIndex index() {
        if (index == null) {
            index = PlantIndex.open(workspace.indexFolder(settings), catalog.view());
        }
        return index;
    }

    /// Knows the genera and species of the catalog, so that "no Thuja" and "not Norway maple" are
    /// understood. Costs one pass over the plants: keep it.
    public NeedReader needReader() {
        return needReader(settings.language());
    }

    /// The same for needs written in another language than the shop's.
    public NeedReader needReader(Locale language) {
        return needReaders().reader(language);
    }

    /// The shop's zones by postal code; empty when it has no table.
    public PostalZones postalZones() {
        return needReaders().zones();
    }

    private NeedReaders needReaders() {
        return new NeedReaders(catalog.view(), content, settings.place(), workspace.postalZonesFile());
    }

    /// Sale rules: loading lists, and asking them about plants.
    public SaleRuleService saleRules() {
        return new SaleRuleService(catalog);
    }

    /// The search, one for the workspace: it keeps what it read until the catalog changes.
    public synchronized NeedSearch needSearch() {
        if (needSearch == null) {
            needSearch = new NeedSearch(catalog.view(), index(), plantsAtHand());
        }
        return needSearch;
    }

    private synchronized PlantsAtHand plantsAtHand() {
        if (plantsAtHand == null) {
            plantsAtHand = new PlantsAtHand(catalog.view());
        }
        return plantsAtHand;
    }

    public NameIndex names() {
        return new NameIndex(index());
    }

    public PlantFinder plantFinder() {
        return new PlantFinder(catalog.view(), catalog::names, this::names);
    }

    /// Finds the plant that is to be replaced, grown here or not.
    public OriginalFinder originals() {
        return new OriginalFinder(catalog.view(), plantFinder(), this::names, this::references, advice);
    }

    /// Plants that are known and not grown here.
    public ReferencePlants references() {
        return references.get();
    }

    /// Finds what takes a plant's place.
    public synchronized SubstituteFinder substitutes() {
        PublishedAdvice now = advice();
        if (substitutes == null || !substitutes.knows(now)) {
            substitutes = new SubstituteFinder(plantsAtHand(), index(), now);
        }
        return substitutes;
    }

    /// What lists name to be planted instead of what: those that come with the program and the shop's own.
    ///
    /// @throws Refusal when the shop's own cannot be read, and could not be before
    public PublishedAdvice advice() {
        return advice.get();
    }

    private PublishedAdvice advice(Path own) {
        return OwnAdvice.after(PublishedAdvice.builtIn().under(olderNames()), own, settings.shopName());
    }

    /// Partners for fruit.
    public PartnerFinder partners() {
        return new PartnerFinder(catalog.view(), index());
    }

    /// What goes with a plant on the same site.
    public CompanionFinder companions() {
        return new CompanionFinder(needSearch());
    }

    /// Plant lists of jobs, as they are stored.
    public PlantLists lists() {
        return catalog.lists();
    }

    /// What sellers saw in the rows.
    public CropWalks walks() {
        return catalog.walks();
    }

    /// The bulletins made of it.
    public Bulletins bulletins() {
        return catalog.bulletins();
    }

    /// Templates, styles, scripts and words.
    public ContentPack content() {
        return content;
    }

    /// Holds plant lists against the catalog.
    public ListService listService() {
        return new ListService(
                catalog.view(),
                new ListChecks(substitutes(), partners(), settings.place(), wording()),
                settings.choices().tiers());
    }

    /// Where a live page leads besides its own plant.
    public PageLinker pageLinks() {
        return new PageLinker(substitutes(), partners(), insteadWords(), wording());
    }

    /// What lists name a plant instead of, in words.
    public InsteadWords insteadWords() {
        return new InsteadWords(
                advice(),
                settings.place().map(Destination::region),
                name -> references().find(name, catalog.view().saleRules()),
                wording());
    }

    /// Who is called what. It holds every name of the catalog and every page asks for it, so it is read anew only when
    /// plants have changed; a sale changes none.
    public synchronized NameBook nameBook() {
        CatalogRevision now = catalog.view().revision();
        boolean plantsChanged = nameBook != null
                && !namesAsOf.equals(now)
                && catalog.view().changesSince(namesAsOf).stream()
                        .anyMatch(change -> change.kind() == CatalogView.Change.Kind.PLANT);
        NameBook known = nameBook;
        if (known == null || plantsChanged) {
            known = catalog.names();
            nameBook = known;
            namesAsOf = known.revision();
        } else {
            namesAsOf = now;
        }
        return known;
    }

    public SheetAssembler sheets() {
        return paper().sheets(wording(), nameBook());
    }

    public PrintService printing() {
        return printing(style());
    }

    /// Prints worded otherwise than the shop's settings say.
    public PrintService printing(PrintStyle style) {
        return paper().printing(style, nameBook());
    }

    /// Cards in the field that would say something else today.
    public Reprints reprints() {
        return new Reprints(catalog.view(), sheets(), catalog.prints(), today());
    }

    /// Prints what somebody puts together.
    public PrintTasks printTasks() {
        PaperServices paper = paper();
        return new PrintTasks(
                (style, palette, ledger) -> paper.printing(style, palette, ledger, nameBook()),
                style -> paper.assembler(paper.sheets(style, nameBook())),
                paper::printer,
                catalog.prints(),
                this::now);
    }

    /// Copies of this workspace.
    public Backups backups() {
        return new Backups(clock);
    }

    /// Documents of many plants.
    public DocumentService documents(PrintStyle style) {
        return paper().documents(style, nameBook());
    }

    /// Prints documents in the shop's inks.
    ///
    /// @throws Refusal when the shop's settings name a palette that is not there
    public Printer printer() {
        return paper().printer();
    }

    /// Every document of the hardest plants, to be looked at.
    public ContactSheetService contactSheet() {
        return paper().contactSheet(style(), nameBook());
    }

    /// Who stands on every page.
    ///
    /// @throws Refusal when the settings name a logo that cannot be printed
    public Shop shop() {
        return new Shop(settings.shopName(), settings.shopLine(), logo.logo());
    }

    /// The shop's logo.
    public LogoFile logo() {
        return logo;
    }

    /// What another base address would mean for paper in the field; ask before it is changed.
    public BaseChange baseChange(URI to) {
        return BaseChange.of(catalog.prints(), to);
    }

    private PaperServices paper() {
        return new PaperServices(settings, shop(), catalog, content, photographs(), clock);
    }

    /// Languages in which paper can be printed.
    public List<String> paperLanguages() {
        return Wording.paperLanguages(content);
    }

    /// What was printed.
    public PrintLedger prints() {
        return catalog.prints();
    }

    /// A line for each address besides that of the settings on which printed codes depend.
    public List<String> otherBases() {
        return paper().otherBases(wording());
    }

    private PhotoFolder photographs() {
        return new PhotoFolder(workspace.photographsFolder());
    }

    public WebPages webPages() {
        return WebPages.using(content, photographs());
    }

    /// Looks at every plant; `each` is handed each result.
    public AuditSums audit(Consumer<PlantAudit> each) {
        return Audit.run(catalog.view(), catalog.names(), olderNames(), each);
    }

    /// Looks at one plant.
    public PlantAudit audit(PlantRecord plant) {
        return Audit.of(plant, catalog.names(), olderNames());
    }

    /// Those of the shop's own reference list, then those that come with the program.
    private OlderNames olderNames() {
        return OlderNames.of(references().olderNames()).and(OlderNames.shipped());
    }

    /// The pages of staff.
    public DeskPages deskPages() {
        return DeskPages.using(content, wording());
    }

    public ReportPages reports() {
        return ReportPages.using(content);
    }

    public ImportService imports() {
        return new ImportService(
                catalog,
                new MapShelf(workspace.mapsFolder()),
                new ShopHabits(settings.choices().containers(), LocalDate.now(clock)));
    }

    /// The newest import that can be taken back.
    public Optional<NewestImport> newestImport() {
        return catalog.newestImport();
    }

    /// Catches the index up with the catalog when it is open; when not, it catches up on opening.
    public void afterChange() {
        PlantIndex open;
        synchronized (this) {
            open = index;
        }
        if (open != null) {
            open.catchUp(); // not while holding up those who only want the index
        }
    }

    /// Keeps the index caught up with changes that other programs make, within a second; close it
    /// before this.
    public Catalog.Following follow() {
        return catalog.follow(revision -> afterChange());
    }

    @Override
    public synchronized void close() {
        if (index != null) {
            index.close();
        }
        catalog.close();
    }
}
