using System.Collections.Immutable;

namespace Lugwork;

/// <summary>The register of sources. Read mostly as stored page openings, so a figure deeper in a page may have been missed.</summary>
public static class Sources
{
    /// <summary>From memory; no page was read.</summary>
    public static Source Memory { get; } = new("MEMORY", SourceKind.Memory, Confidence.Low, "from memory, no page read");

    /// <summary>Common practice of the trade, no source found.</summary>
    public static Source CommonPractice { get; } = new("COMMON-PRACTICE", SourceKind.CommonPractice, Confidence.Low, "common practice, no source");

    /// <summary>Arithmetic on values that have sources of their own.</summary>
    public static Source Derived { get; } = new("DERIVED", SourceKind.Derived, Confidence.Medium, "derived by arithmetic from sourced values");

    /// <summary>Freehub types, standards for road and MTB wheels.</summary>
    internal static readonly Source FreehubTypes = new("FREEHUB-TYPES", SourceKind.Handbook, Confidence.Medium, "Freehub types, standards for road and MTB wheels", "Cyclabo", "2023", "cyclabo.com/topics/shpw0w3wbb");

    /// <summary>A guide to mountain bike axle standards.</summary>
    internal static readonly Source AxleGuide = new("AXLE-GUIDE", SourceKind.Press, Confidence.Medium, "A guide to mountain bike axle standards", "BikeRadar (Immediate Media)", "2020s", "bikeradar.com/features/a-guide-to-mountain-bike-axle-standards/");

    /// <summary>Hub 'Standards'.</summary>
    internal static readonly Source HubStandards = new("HUB-STANDARDS", SourceKind.MakerDocument, Confidence.Medium, "Hub 'Standards'", "Boyd Cycling", "2020", "boydcycling.com/blogs/news/hub-standards");

    /// <summary>Tech Talk: Boost 148 explained (Art's Cyclery text, republished).</summary>
    internal static readonly Source Boost148Explained = new("BOOST-148-EXPLAINED", SourceKind.Press, Confidence.Medium, "Tech Talk: Boost 148 explained (Art's Cyclery text, republished)", "Art's Cyclery / zenocycleparts", "2015", "zenocycleparts.com/blogs/mountain-bike-review/tech-talk-boost-148-explained");

    /// <summary>How to Choose the Right Disc Brake Adapter.</summary>
    internal static readonly Source AdapterGuide = new("ADAPTER-GUIDE", SourceKind.Handbook, Confidence.Medium, "How to Choose the Right Disc Brake Adapter", "Loam Goat", "undated", "loamgoat.com/blogs/knowledge/stop-guessing-here-s-how-to-choose-the-right-disc-brake-adapter");

    /// <summary>Answer on IS and post mount (Japanese copy of a Bicycles QandA answer).</summary>
    internal static readonly Source MountAnswer = new("MOUNT-ANSWER", SourceKind.Community, Confidence.Medium, "Answer on IS and post mount (Japanese copy of a Bicycles Q&A answer)", "Bicycles Stack Exchange copy", "undated", "ja.bicycles.asklobster.com/posts/44161");

    /// <summary>Axle and hub standards, cassette compatibility and rotor mounting.</summary>
    internal static readonly Source WheelBuilderAxles = new("WHEEL-BUILDER-AXLES", SourceKind.Community, Confidence.Low, "Axle and hub standards, cassette compatibility and rotor mounting", "Dandy Horse", "undated", "dandyhorse.cc/en/axle-and-hub-standards-cassette-compatibility-and-rotor-mounting-how-to-measure-and-choose");

    /// <summary>Information and Advice: Bicycle Wheels (O.L.D. list).</summary>
    internal static readonly Source WheelAdvice = new("WHEEL-ADVICE", SourceKind.Handbook, Confidence.Medium, "Information & Advice: Bicycle Wheels (O.L.D. list)", "Moruya Bicycles", "undated", "moruyabicycles.com.au/contents/en-uk/d1281_Info___Advice.html");

    /// <summary>Splined sprocket carrier (workshop handbook).</summary>
    internal static readonly Source SprocketCarrier = new("SPROCKET-CARRIER", SourceKind.MakerDocument, Confidence.Medium, "Splined sprocket carrier (workshop handbook)", "Rohloff", "undated", "rohloff.de/en/service/handbook/speedhub/workshop/splined-carrier-conversion");

    /// <summary>1x13 gravel group and the N3W body.</summary>
    internal static readonly Source N3wPage = new("N-3W-PAGE", SourceKind.Community, Confidence.Low, "1x13 gravel group and the N3W body", "cbnanashi blog; chan-bike.com", "2020", "blog.cbnanashi.net/2020/07/14768; chan-bike.com/?p=42784");

    /// <summary>Freehubs and cassettes (body length table).</summary>
    internal static readonly Source FreehubLengths = new("FREEHUB-LENGTHS", SourceKind.Community, Confidence.Medium, "Freehubs and cassettes (body length table)", "cornant.uk", "undated", "cornant.uk/info/cassettes.html");

    /// <summary>The problem with flat mount.</summary>
    internal static readonly Source FlatMountBuilder = new("FLAT-MOUNT-BUILDER", SourceKind.Community, Confidence.Low, "The problem with flat mount", "peterverdone.com", "undated", "peterverdone.com/the-problem-with-flat-mount");

    /// <summary>8-spline freehub bodies: which do you have?.</summary>
    internal static readonly Source EightSpline = new("EIGHT-SPLINE", SourceKind.Handbook, Confidence.Medium, "8-spline freehub bodies: which do you have?", "Branford Bike", "undated", "branfordbike.com/new-page-1");

    /// <summary>Our take on 157TRAIL aka Superboost axle widths.</summary>
    internal static readonly Source AxleWidths157 = new("AXLE-WIDTHS-157", SourceKind.MakerDocument, Confidence.Medium, "Our take on 157TRAIL aka Superboost axle widths", "Knolly Bikes", "2020", "knollybikes.com/post/talk-bike-nerdy-to-me-knolly-s-take-on-157trail-aka-superboost-axle-widths");

    /// <summary>XDR freehub body explained.</summary>
    internal static readonly Source XdrExplained = new("XDR-EXPLAINED", SourceKind.Press, Confidence.Medium, "XDR freehub body explained", "Bikerumor", "2017", "bikerumor.com/2017/09/05/sram-explains-xdr-freehub-body-will-make-12-speed-road-possible/");

    /// <summary>Freehub / cassette page.</summary>
    internal static readonly Source FreehubPage = new("FREEHUB-PAGE", SourceKind.MakerDocument, Confidence.Medium, "Freehub / cassette page", "Rol Wheels", "undated", "rolwheels.com/pages/freehub-cassette-compability");

    /// <summary>Cassette FAQ.</summary>
    internal static readonly Source CassetteFaq = new("CASSETTE-FAQ", SourceKind.Community, Confidence.Low, "Cassette FAQ", "BikeRadar forum", "2013", "forum.bikeradar.com/discussion/12905742");

    /// <summary>Guide for 11-speed, 12-speed and MS freehubs.</summary>
    internal static readonly Source TwelveGuide = new("TWELVE-GUIDE", SourceKind.MakerDocument, Confidence.Medium, "Guide for 11-speed, 12-speed and MS freehubs", "ICAN Cycling", "undated", "icancycling.com/blogs/articles/compatibility-guide-for-shimano-11-speed-12-speed-and-ms-series-freehub-and-cassettes");

    /// <summary>Disc Brake Mounting Standards.</summary>
    internal static readonly Source MountTechInfo = new("MOUNT-TECH-INFO", SourceKind.Handbook, Confidence.Medium, "Disc Brake Mounting Standards", "Bikeman tech info", "undated", "bikeman.com/bicycle-repair-tech-info/bikeman-tech-info/1638-51mm-international-standard-74mm-post-mount");

    /// <summary>Disc mounts, an explanation.</summary>
    internal static readonly Source MountForum = new("MOUNT-FORUM", SourceKind.Community, Confidence.Low, "Disc mounts, an explanation", "BikeRadar forum", "2007", "forum.bikeradar.com/viewtopic.php?t=1590919");

    /// <summary>International Standard Brake Mounting IS Better.</summary>
    internal static readonly Source IsAdapters = new("IS-ADAPTERS", SourceKind.Community, Confidence.Medium, "International Standard Brake Mounting IS Better", "Essential Cycles", "undated", "essentialcycles.com/post/international-standard-brake-mount-tt-3");

    /// <summary>Traditional Thread-on Freewheels.</summary>
    internal static readonly Source Freewheels = new("FREEWHEELS", SourceKind.Handbook, Confidence.High, "Traditional Thread-on Freewheels", "sheldonbrown.com", "undated", "sheldonbrown.com/freewheels.html");

    /// <summary>The problem with flat mount brakes.</summary>
    internal static readonly Source FlatMountProblem = new("FLAT-MOUNT-PROBLEM", SourceKind.Community, Confidence.Medium, "The problem with flat mount brakes", "michaelhanslip.com", "2024", "michaelhanslip.com/blog/files/27501a5a925112db682429133f801661-115.html");

    /// <summary>MTB Axle Standards Explained.</summary>
    internal static readonly Source AxleStandardsBlog = new("AXLE-STANDARDS-BLOG", SourceKind.Community, Confidence.Medium, "MTB Axle Standards Explained", "darrenlugg.co.uk", "2017", "darrenlugg.co.uk/news/30/16/MTB-Axle-Standards-Explained-Cycling-Content-Example-Darren-Lugg");

    /// <summary>Dear bike industry: really, a 'new' 20x110mm axle standard?!?!.</summary>
    internal static readonly Source Axle20Article = new("AXLE-20-ARTICLE", SourceKind.Press, Confidence.Medium, "Dear bike industry: really, a 'new' 20x110mm axle standard?!?!", "BikeRadar (Immediate Media)", "2016", "bikeradar.com/features/dear-bike-industry-really-a-new-20x110mm-axle-standard/");

    /// <summary>XD driver body explained (BikeRadar text, republished).</summary>
    internal static readonly Source XdExplained = new("XD-EXPLAINED", SourceKind.Press, Confidence.Medium, "XD driver body explained (BikeRadar text, republished)", "BikeRadar copy", "2015", "foldbikesparty.blogspot.com/2015/06/sram-xd-driver-body-explained.html");

    /// <summary>Rear hubs / Front hubs (trials).</summary>
    internal static readonly Source TrialsHubs = new("TRIALS-HUBS", SourceKind.Handbook, Confidence.Medium, "Rear hubs / Front hubs (trials)", "trial-bikes.com", "undated", "trial-bikes.com/en/content/rear-hubs.html");

    /// <summary>Super Boost Plus 157 rear axle standard - is it here to stay?.</summary>
    internal static readonly Source SuperBoostPress = new("SUPER-BOOST-PRESS", SourceKind.Press, Confidence.Medium, "Super Boost Plus 157 rear axle standard - is it here to stay?", "Enduro MTB", "2020", "enduro-mtb.com/en/super-boost-plus-standard/");

    /// <summary>Sprocket and wheel interchange explained.</summary>
    internal static readonly Source SprocketExchange = new("SPROCKET-EXCHANGE", SourceKind.Handbook, Confidence.Medium, "Sprocket and wheel interchange explained", "Cyclabo", "2021, rev 2023", "cyclabo.com/topics/xag5agdoa4/");

    /// <summary>6-bolt rotors and splined hubs.</summary>
    internal static readonly Source SixBoltAndSplined = new("SIX-BOLT-AND-SPLINED", SourceKind.Community, Confidence.Medium, "6-bolt rotors and splined hubs", "brainybiker.com", "undated", "brainybiker.com/the-compatibility-of-6-bolt-rotors-and-centerlock-hubs/");

    /// <summary>Bicycle Frame/Hub Spacing.</summary>
    internal static readonly Source FrameSpacing = new("FRAME-SPACING", SourceKind.Handbook, Confidence.High, "Bicycle Frame/Hub Spacing", "sheldonbrown.com", "undated", "sheldonbrown.com/frame-spacing.html");

    /// <summary>Cassette total widths (table).</summary>
    internal static readonly Source CassetteWidths = new("CASSETTE-WIDTHS", SourceKind.Community, Confidence.Low, "Cassette total widths (table)", "brainybiker.com", "undated", "brainybiker.com/archives/18693");

    /// <summary>How do I know if I have a Boost rear hub?.</summary>
    internal static readonly Source BoostBlog = new("BOOST-BLOG", SourceKind.Community, Confidence.Low, "How do I know if I have a Boost rear hub?", "celiamania.com", "undated", "celiamania.com/?cat=99");

    /// <summary>12-speed cassette on an 11-speed hub.</summary>
    internal static readonly Source TwelveOnEleven = new("TWELVE-ON-ELEVEN", SourceKind.Community, Confidence.Low, "12-speed cassette on an 11-speed hub", "brainybiker.com", "undated", "brainybiker.com/installing-a-12-speed-cassette-on-an-11-speed-hub-possible-or-not/");

    /// <summary>Mountain Hub Spacing: The 6-Millimeter Conundrum.</summary>
    internal static readonly Source SixMillimetre = new("SIX-MILLIMETRE", SourceKind.MakerDocument, Confidence.Medium, "Mountain Hub Spacing: The 6-Millimeter Conundrum", "Roval Components", "undated", "rovalcomponents.com/blogs/journal/the-6-millimeter-conundrum");

    /// <summary>Threaded #17: Centerlock rotor lockring things.</summary>
    internal static readonly Source LockringArticle = new("LOCKRING-ARTICLE", SourceKind.Press, Confidence.Medium, "Threaded #17: Centerlock rotor lockring things", "Escape Collective", "2024", "escapecollective.com/threaded-17-centerlock-rotor-lockring-things");

    /// <summary>Alles ueber Nabenschaltungen (sprocket paragraph).</summary>
    internal static readonly Source HubGearPage = new("HUB-GEAR-PAGE", SourceKind.Handbook, Confidence.Medium, "Alles ueber Nabenschaltungen (sprocket paragraph)", "WikiPedalia", "undated", "wikipedalia.com/index.php/Spezial:Mobiler_Unterschied/9828");

    /// <summary>Chainline and Overlocknut Distance on Bicycles with Internal-Gear Hubs.</summary>
    internal static readonly Source GearHubChainline = new("GEAR-HUB-CHAINLINE", SourceKind.Handbook, Confidence.Medium, "Chainline and Overlocknut Distance on Bicycles with Internal-Gear Hubs", "sheldonbrown.com", "undated", "sheldonbrown.com/chainline-internal-gear.html");

    /// <summary>148x12, the future.</summary>
    internal static readonly Source FrameBuilder148 = new("FRAME-BUILDER-148", SourceKind.Community, Confidence.Medium, "148x12, the future", "Waltworks", "2015", "waltworks.com/2015/03/all-words-no-pics-ken-148x12-future/");

    /// <summary>Understanding Drivetrain and Rear Tire Capacity.</summary>
    internal static readonly Source FatRearEnds = new("FAT-REAR-ENDS", SourceKind.MakerDocument, Confidence.Medium, "Understanding Drivetrain & Rear Tire Capacity", "Salsa Cycles", "2012", "salsacycles.com/culture/tech_talk_understanding_drivetrain_rear_tire_capacity");

    /// <summary>What are Torque Caps?.</summary>
    internal static readonly Source EndCapPage = new("END-CAP-PAGE", SourceKind.MakerDocument, Confidence.Medium, "What are Torque Caps?", "NOBL Wheels", "undated", "noblwheels.com/blog/what-are-torque-caps/");

    /// <summary>Boost Your Potential For Growth.</summary>
    internal static readonly Source BoostTrade = new("BOOST-TRADE", SourceKind.Press, Confidence.Medium, "Boost Your Potential For Growth", "QBP", "2015", "qbp.com/call_up/boost-your-potential-for-growth");

    /// <summary>Rubber Side Down: Disc Brake Adapters.</summary>
    internal static readonly Source AdaptersPage = new("ADAPTERS-PAGE", SourceKind.Handbook, Confidence.Medium, "Rubber Side Down: Disc Brake Adapters", "Art's Cyclery", "2014", "blog.artscyclery.com/keeping-the-rubber-side-down/rubber-side-down-disc-brake-adapters/");

    /// <summary>Mailing-list post by the same reference site on fitting a 130 mm hub in a 126 mm frame.</summary>
    internal static readonly Source SpreadPost = new("SPREAD-POST", SourceKind.Handbook, Confidence.Medium, "Mailing-list post by the same reference site on fitting a 130 mm hub in a 126 mm frame", "Classic Rendezvous list archive", "2004", "smontanaro.net/CR/2004/7/785");

    /// <summary>Chainline, single-speed.</summary>
    internal static readonly Source SingleChainline = new("SINGLE-CHAINLINE", SourceKind.Handbook, Confidence.Medium, "Chainline, single-speed", "sheldonbrown.com", "undated", "sheldonbrown.com/chainline-single.html");

    /// <summary>Know Your Hub Standards.</summary>
    internal static readonly Source HubStandardsPage = new("HUB-STANDARDS-PAGE", SourceKind.MakerDocument, Confidence.Medium, "Know Your Hub Standards", "Pub Wheels", "undated", "pubwheels.com/blogs/news/know-your-hub-standards");

    /// <summary>A flat mount disc caliper on a post mount frame? (press text, republished).</summary>
    internal static readonly Source FlatOnPost = new("FLAT-ON-POST", SourceKind.Press, Confidence.Medium, "A flat mount disc caliper on a post mount frame? (press text, republished)", "CyclingTips copy", "2022", "michmutters.com/a-flat-mount-disc-caliper-on-a-post-mount-frame-theres-an-adapter-for-that/");

    /// <summary>Decoding fatbike hub spacing and drivetrain.</summary>
    internal static readonly Source FatHubSpacing = new("FAT-HUB-SPACING", SourceKind.Press, Confidence.Medium, "Decoding fatbike hub spacing and drivetrain", "Bikerumor with a chainring maker", "2014", "bikerumor.com/tech-speak-decoding-fatbike-hub-spacing-and-drivetrain-compatibility-with-wolf-tooth-components/");

    /// <summary>Rotor alignment and a 100 mm hub with 3.5 mm end caps.</summary>
    internal static readonly Source EndCapForum = new("END-CAP-FORUM", SourceKind.Community, Confidence.Low, "Rotor alignment and a 100 mm hub with 3.5 mm end caps", "CycleChat forum", "2020", "cyclechat.net/threads/264136");

    /// <summary>How 135mm rear hub spacing affects road chainline and shifting.</summary>
    internal static readonly Source Chainline135 = new("CHAINLINE-135", SourceKind.Press, Confidence.Medium, "How 135mm rear hub spacing affects road chainline and shifting", "Bikerumor", "2012", "bikerumor.com/2012/11/28/tech-breakdown-how-135mm-rear-hub-spacing-affects-road-bike-chainline-shifting/");

    /// <summary>2016 axle standards part 1: rear 148mm thru axle.</summary>
    internal static readonly Source Boost148Press = new("BOOST-148-PRESS", SourceKind.Press, Confidence.Medium, "2016 axle standards part 1: rear 148mm thru axle", "Bikerumor", "2014", "bikerumor.com/2014/12/19/2016-axle-standards-part-1-rear-148mm-thru-axle-coming-fast-its-about-more-than-just-better-wheels");

    /// <summary>Axle nut.</summary>
    internal static readonly Source AxleNut = new("AXLE-NUT", SourceKind.Community, Confidence.Medium, "Axle nut", "wrenchfu.com", "undated", "wrenchfu.com/axle-nut/");

    /// <summary>Tire Sizing Systems.</summary>
    internal static readonly Source BeadSeats = new("BEAD-SEATS", SourceKind.Handbook, Confidence.Medium, "Tire Sizing Systems", "sheldonbrown.com", "1997-2024", "web.archive.org/web/20080108152809/http:/sheldonbrown.com/tire_sizing.html");

    /// <summary>ETRTO (ISO 5775), workshop wiki table.</summary>
    internal static readonly Source BeadSeatSingle = new("BEAD-SEAT-SINGLE", SourceKind.Handbook, Confidence.Low, "ETRTO (ISO 5775), workshop wiki table", "Wiklou, wiki of L'Atelier du velo, Lyon", "2024", "wiklou.org/wiki/ETRTO_(ISO_5775)");

    /// <summary>BS ISO 5775-2:2015 Bicycle tyres and rims, Part 2: Rims - scope and clause extract.</summary>
    internal static readonly Source Iso5775Part2Extract = new("ISO-5775-PART-2-EXTRACT", SourceKind.Standard, Confidence.Medium, "BS ISO 5775-2:2015 Bicycle tyres and rims, Part 2: Rims - scope and clause extract", "ulstandardspdf.com extract of BSI text", "2015", "www.ulstandardspdf.com/bs-iso-5775-2-2015-pdf-free.html");

    /// <summary>ISO 5775 (encyclopaedia article).</summary>
    internal static readonly Source Iso5775Article = new("ISO-5775-ARTICLE", SourceKind.Handbook, Confidence.Medium, "ISO 5775 (encyclopaedia article)", "Wikipedia", "read 2026-11", "en.wikipedia.org/wiki/ISO_5775");

    /// <summary>Compatibilite pneu / roues (table headed Norme ETRTO 2022).</summary>
    internal static readonly Source WidthRanges2022 = new("WIDTH-RANGES-2022", SourceKind.MakerDocument, Confidence.Medium, "Compatibilite pneu / roues (table headed Norme ETRTO 2022)", "distributor support page of a wheel maker (Axoreo)", "2022+", "axoreo.freshdesk.com/support/solutions/articles/77000546786-compatibilit%C3%A9-pneu-roues-reynolds");

    /// <summary>Zulaessige Kombinationen von Reifen und Felgen nach ETRTO, Stand 2006.</summary>
    internal static readonly Source WidthMatrix2006 = new("WIDTH-MATRIX-2006", SourceKind.Community, Confidence.Low, "Zulaessige Kombinationen von Reifen und Felgen nach ETRTO, Stand 2006", "de.rec.fahrrad wiki", "2006 state", "de-rec-fahrrad.de/_export/xhtml/technik/etrtotabelle");

    /// <summary>In conversation about hookless rims / De Gendt blowout report.</summary>
    internal static readonly Source HooklessIso2023 = new("HOOKLESS-ISO-2023", SourceKind.Press, Confidence.Medium, "In conversation about hookless rims / De Gendt blowout report", "road.cc", "2024", "road.cc/node/306947");

    /// <summary>Industry divided over new tyre rim-size regulations.</summary>
    internal static readonly Source HooklessGap = new("HOOKLESS-GAP", SourceKind.Press, Confidence.Low, "Industry divided over new tyre rim-size regulations", "Cycling Weekly", "2023-06-15", "gb.readly.com/magazines/cycling-weekly/2023-06-15/64887a335750442cff33b107");

    /// <summary>Tire compatibility statement (PDF).</summary>
    internal static readonly Source TyreStatement = new("TYRE-STATEMENT", SourceKind.MakerDocument, Confidence.Medium, "Tire compatibility statement (PDF)", "a hub and wheel maker (Chris King)", "2023", "cdn.shopify.com/s/files/1/2920/2114/files/Chris_King_Wheel_Tire_Statement.pdf");

    /// <summary>Bike tire width v rim width (reproduces the guideline of T21).</summary>
    internal static readonly Source WidthGuideline = new("WIDTH-GUIDELINE", SourceKind.Handbook, Confidence.Low, "Bike tire width v rim width (reproduces the guideline of T21)", "megalos.rs copy", "read 2026-11", "megalos.rs/gorod/bike-tire-width-vs-rim-width.html");

    /// <summary>Tyre and Wheel Sizes.</summary>
    internal static readonly Source BeadInterchange = new("BEAD-INTERCHANGE", SourceKind.Handbook, Confidence.Low, "Tyre and Wheel Sizes", "Bikefix", "read 2026-11", "bikefix.co.uk/tyre-and-wheel-sizes");

    /// <summary>The optimal rim for tubeless road racing tyres (quotes ETRTO 2019).</summary>
    internal static readonly Source OptimalRim = new("OPTIMAL-RIM", SourceKind.MakerDocument, Confidence.Medium, "The optimal rim for tubeless road racing tyres (quotes ETRTO 2019)", "Schwalbe", "after 2019", "www.schwalbe.com/en/tubeless-laufradanforderungen");

    /// <summary>Tubeless racing bike requirement.</summary>
    internal static readonly Source HooklessPressure = new("HOOKLESS-PRESSURE", SourceKind.MakerDocument, Confidence.Medium, "Tubeless racing bike requirement", "Schwalbe", "from model year 2020", "www.schwalbe.com/en/tubeless-racing-bike-requirement/");

    /// <summary>Groessenbezeichnung (size designation).</summary>
    internal static readonly Source SizeDesignation = new("SIZE-DESIGNATION", SourceKind.MakerDocument, Confidence.Medium, "Groessenbezeichnung (size designation)", "Schwalbe", "read 2026-11", "schwalbe.com/service/technik-faq/groessenbezeichnung");

    /// <summary>2020 ETRTO standards for bike tires.</summary>
    internal static readonly Source MeasuringRims2020 = new("MEASURING-RIMS-2020", SourceKind.MakerDocument, Confidence.Medium, "2020 ETRTO standards for bike tires", "Vittoria", "2019/2020", "www.vittoria.com/us/etrto-bike-tires");

    /// <summary>JIS D 9421:2009 Bicycles - Rims (English).</summary>
    internal static readonly Source RimsJapan = new("RIMS-JAPAN", SourceKind.Standard, Confidence.Low, "JIS D 9421:2009 Bicycles - Rims (English)", "Japanese Standards Association, public copy", "2009", "pdfcoffee.com/japan-edi-ct-of-government-4-pdf-free.html");

    /// <summary>26 inch wheel article reproducing the decimal table of T21.</summary>
    internal static readonly Source DecimalSizes = new("DECIMAL-SIZES", SourceKind.Community, Confidence.Medium, "26 inch wheel article reproducing the decimal table of T21", "nicecurmudgeon.com", "read 2026-11", "nicecurmudgeon.com/how-much-to-swing-26-inch-bicycle-wheels/");

    /// <summary>Bicycle Tire Size Chart.</summary>
    internal static readonly Source SizeChart = new("SIZE-CHART", SourceKind.Community, Confidence.Medium, "Bicycle Tire Size Chart", "dimensionsinfo.com", "read 2026-11", "www.dimensionsinfo.com/bicycle-tire-size-chart/");

    /// <summary>European Tyre and Rim Technical Organisation (encyclopaedia article, size list).</summary>
    internal static readonly Source SizeList = new("SIZE-LIST", SourceKind.Handbook, Confidence.Medium, "European Tyre and Rim Technical Organisation (encyclopaedia article, size list)", "Wikipedia mirror", "read 2026-11", "lowcostdomainnames.domain.workers.dev/wiki/European_Tyre_and_Rim_Technical_Organisation");

    /// <summary>Cycle Tyre Sizes - cross reference chart.</summary>
    internal static readonly Source CrossReference = new("CROSS-REFERENCE", SourceKind.Handbook, Confidence.Medium, "Cycle Tyre Sizes - cross reference chart", "dotbike.com", "read 2026-11", "www.dotbike.com/tyre_size_reference.aspx");

    /// <summary>The skinny (and fat) on tire sizes.</summary>
    internal static readonly Source TyreMakerSizes = new("TYRE-MAKER-SIZES", SourceKind.MakerDocument, Confidence.Medium, "The skinny (and fat) on tire sizes", "Michelin Bicycle", "c. 2010", "www.michelinbicycle.com/michelinbicycle/index.cfm?event=tiresizes.view");

    /// <summary>700A / 700B / 700 rim diameters (mailing list, H. Stone).</summary>
    internal static readonly Source FrenchDiameters = new("FRENCH-DIAMETERS", SourceKind.Community, Confidence.Medium, "700A / 700B / 700 rim diameters (mailing list, H. Stone)", "Classic Rendezvous list archive", "2010-03", "smontanaro.net/CR/2010/3/208");

    /// <summary>A guide to cycle tyre sizes / Tyre size confusion.</summary>
    internal static readonly Source TyreSizeGuide = new("TYRE-SIZE-GUIDE", SourceKind.Handbook, Confidence.Medium, "A guide to cycle tyre sizes / Tyre size confusion", "Cycling UK (R. Hallett)", "read 2026-11", "www.cyclinguk.org/cyclists-library/components/wheels-tyres/tyre-sizes");

    /// <summary>Bandenmaten (old Dutch bicycle site).</summary>
    internal static readonly Source OldDutchSizes = new("OLD-DUTCH-SIZES", SourceKind.Community, Confidence.Medium, "Bandenmaten (old Dutch bicycle site)", "fietssite.jouwweb.nl", "read 2026-11", "fietssite.jouwweb.nl/02");

    /// <summary>Bandenmaten en hun aanduiding.</summary>
    internal static readonly Source DutchAndGermanOrder = new("DUTCH-AND-GERMAN-ORDER", SourceKind.Community, Confidence.Medium, "Bandenmaten en hun aanduiding", "tilburgfietsen.nl", "read 2026-11", "tilburgfietsen.nl/bandenmaten/");

    /// <summary>Reifengroessenverwirrung.</summary>
    internal static readonly Source SixteenInchSizes = new("SIXTEEN-INCH-SIZES", SourceKind.Community, Confidence.Medium, "Reifengroessenverwirrung", "raederwerft blog", "c. 2012", "xn--rderwerft-v2a.de/radschlaege_blog_post/");

    /// <summary>Tyre sizes explained.</summary>
    internal static readonly Source ImperialAndUs27 = new("IMPERIAL-AND-US-27", SourceKind.Community, Confidence.Low, "Tyre sizes explained", "cyclinglabs.net", "read 2026-11", "cyclinglabs.net/tyre-sizes-explained");

    /// <summary>Rim and Tire Standards.</summary>
    internal static readonly Source WideRimStatement = new("WIDE-RIM-STATEMENT", SourceKind.MakerDocument, Confidence.Medium, "Rim and Tire Standards", "Rene Herse Cycles (J. Heine)", "c. 2020", "www.renehersecycles.com/rim-and-tire-standards/");

    /// <summary>Forum thread on the coming ETRTO change (28 mm tyre, 23 mm max rim).</summary>
    internal static readonly Source HooklessRumour = new("HOOKLESS-RUMOUR", SourceKind.Community, Confidence.Low, "Forum thread on the coming ETRTO change (28 mm tyre, 23 mm max rim)", "TrainerRoad forum", "2023-04", "www.trainerroad.com/forum/t/rumor-upcoming-etrto-spec-to-limit-inner-rim-width-to-23mm-for-28mm-tires/81458");

    /// <summary>Presta? No problem (drilling a rim).</summary>
    internal static readonly Source ValveDrilling = new("VALVE-DRILLING", SourceKind.Community, Confidence.Medium, "Presta? No problem (drilling a rim)", "Urbanus Magnus blog", "2012-05", "urbanusmagnus.blogspot.com/2012/05/presta-no-problem-rip-old-wheelset.html");

    /// <summary>Felge (rim table with valve hole column).</summary>
    internal static readonly Source RimTable = new("RIM-TABLE", SourceKind.Handbook, Confidence.Medium, "Felge (rim table with valve hole column)", "Radreise-Wiki", "2013", "radreise-wiki.de/index.php?title=Felge");

    /// <summary>Spoke and Wheel (wheelset data sheet copied).</summary>
    internal static readonly Source WheelDataSheet = new("WHEEL-DATA-SHEET", SourceKind.Community, Confidence.Medium, "Spoke and Wheel (wheelset data sheet copied)", "GitHub wiki stopcoder/BikeNotes", "2017", "github.com/stopcoder/BikeNotes/wiki/Spoke-and-Wheel");

    /// <summary>Presta valve (encyclopaedia-derived).</summary>
    internal static readonly Source ValveArticle = new("VALVE-ARTICLE", SourceKind.Community, Confidence.Medium, "Presta valve (encyclopaedia-derived)", "thedailyomnivore.net", "2016", "thedailyomnivore.net/2016/10/10/");

    /// <summary>Hub and rim measuring (Damon Rinard text).</summary>
    internal static readonly Source HubMeasuring = new("HUB-MEASURING", SourceKind.Handbook, Confidence.Medium, "Hub and rim measuring (Damon Rinard text)", "ozbizz.com copy", "read 2026-11", "www.ozbizz.com/melton/kensbikes/slc.htm");

    /// <summary>Mavic s'impose dans le tubeless.</summary>
    internal static readonly Source RoadTubeless2017 = new("ROAD-TUBELESS-2017", SourceKind.Press, Confidence.Medium, "Mavic s'impose dans le tubeless", "Le Cycle", "2017-07-28", "www.pressreader.com/france/le-cycle/20170728/283029759675368");

    /// <summary>tiresize page (how labels build the rim diameter).</summary>
    internal static readonly Source RimDiameterFromLabel = new("RIM-DIAMETER-FROM-LABEL", SourceKind.Community, Confidence.Low, "tiresize page (how labels build the rim diameter)", "suganoya.net", "read 2026-11", "suganoya.net/tiresize.htm");

    /// <summary>MTB Thru Axles: who knew there were so many 'standards'.</summary>
    internal static readonly Source ManyThruAxles = new("MANY-THRU-AXLES", SourceKind.Community, Confidence.Medium, "MTB Thru Axles: who knew there were so many 'standards'", "bikeandskiblog.com", "2016", "bikeandskiblog.com/wp/2016/01/12/mtb-thru-axles-who-knew-there-were-so-many-standards/");

    /// <summary>Seatpost diameter sizes (standards).</summary>
    internal static readonly Source PostSizes = new("POST-SIZES", SourceKind.Handbook, Confidence.Medium, "Seatpost diameter sizes (standards)", "BikeGremlin", "16 Nov 2018", "bike.bikegremlin.com/3114/seat-post-diameter-sizes-standards/");

    /// <summary>Bar diameter; Seatpost diameter.</summary>
    internal static readonly Source PostSizesCanada = new("POST-SIZES-CANADA", SourceKind.Handbook, Confidence.Medium, "Bar diameter; Seatpost diameter", "standardbikes.ca", "n.d.", "standardbikes.ca/FldHelpPg.asp?FldHelpId=1390");

    /// <summary>The anatomy of a dropper post.</summary>
    internal static readonly Source DropperAnatomy = new("DROPPER-ANATOMY", SourceKind.Press, Confidence.Medium, "The anatomy of a dropper post", "BikeRadar", "n.d.", "www.bikeradar.com/features/the-anatomy-of-a-dropper-post/");

    /// <summary>Post modernism.</summary>
    internal static readonly Source PostModernism = new("POST-MODERNISM", SourceKind.Press, Confidence.Medium, "Post modernism", "Seven Day Cyclist", "n.d.", "www.sevendaycyclist.com/post-modernism");

    /// <summary>What is the seatpost collar?.</summary>
    internal static readonly Source CollarPage = new("COLLAR-PAGE", SourceKind.Community, Confidence.Medium, "What is the seatpost collar?", "bikehike.org (repeats Wikipedia, Seatpost)", "n.d.", "bikehike.org/?p=214903");

    /// <summary>Clamps.</summary>
    internal static readonly Source ClampShop = new("CLAMP-SHOP", SourceKind.MakerDocument, Confidence.Medium, "Clamps", "Compulsion Cycles", "n.d.", "www.compulsioncycles.com/product-category/clamps/");

    /// <summary>16 CFR 1512.15 Requirements for seat.</summary>
    internal static readonly Source SeatRegulation = new("SEAT-REGULATION", SourceKind.Standard, Confidence.High, "16 CFR 1512.15 Requirements for seat", "US Code of Federal Regulations", "rev. 2007, amended 2011", "edocket.access.gpo.gov/cfr_2007/janqtr/16cfr1512.15.htm");

    /// <summary>Operation Manual 2015, pp. 94-95.</summary>
    internal static readonly Source FrameManual = new("FRAME-MANUAL", SourceKind.MakerDocument, Confidence.Medium, "Operation Manual 2015, pp. 94-95", "GT Bicycles", "2015", "");

    /// <summary>Vintage French seatpost sizes.</summary>
    internal static readonly Source FrenchPosts = new("FRENCH-POSTS", SourceKind.Community, Confidence.Medium, "Vintage French seatpost sizes", "thevelocollective.com", "undated", "thevelocollective.com/vintage-french-seatpost-sizes/");

    /// <summary>Seatpost feature.</summary>
    internal static readonly Source RoadPostFeature = new("ROAD-POST-FEATURE", SourceKind.Press, Confidence.Low, "Seatpost feature", "RoadCyclingUK", "undated", "roadcyclinguk.com/tech/tech-features/thomson-elite-seatpost.html");

    /// <summary>Is there a standard for seat pillar thickness? (in Japanese).</summary>
    internal static readonly Source FoldingPosts = new("FOLDING-POSTS", SourceKind.Community, Confidence.Medium, "Is there a standard for seat pillar thickness? (in Japanese)", "Hakusen Hatogaya (shop blog)", "2017", "hakusen-hatogaya.lekumo.biz/blog/2017/09/post-a844.html");

    /// <summary>Standardized Headset Identification System (repost of the announcement).</summary>
    internal static readonly Source HeadsetCodeNote = new("HEADSET-CODE-NOTE", SourceKind.Community, Confidence.Medium, "Standardized Headset Identification System (repost of the announcement)", "BikeRadar forum", "14 Feb 2011", "forum.bikeradar.com/viewtopic.php?f=40073&t=12758049&p=16768913");

    /// <summary>S.H.I.S. Overview.</summary>
    internal static readonly Source HeadsetCodeOverview = new("HEADSET-CODE-OVERVIEW", SourceKind.MakerDocument, Confidence.Medium, "S.H.I.S. Overview", "headset maker's technical centre (Cane Creek)", "n.d.", "www.canecreek.com/tech-center/headsets/shis/overview");

    /// <summary>Headset Standards Explained: Reading the SHIS Chart.</summary>
    internal static readonly Source HeadsetChart = new("HEADSET-CHART", SourceKind.MakerDocument, Confidence.High, "Headset Standards Explained: Reading the SHIS Chart", "Unior USA (tool maker)", "n.d.", "uniorusa.com/blogs/tech-tips/headset-standards-explained-shis-chart");

    /// <summary>Headset Identification and Specification Guide, rev. F+, 11 May 2010 (transcription; only its first pages readable).</summary>
    internal static readonly Source HeadsetGuide = new("HEADSET-GUIDE", SourceKind.MakerDocument, Confidence.Medium, "Headset Identification and Specification Guide, rev. F+, 11 May 2010 (transcription; only its first pages readable)", "Cane Creek", "2010", "doczz.net/doc/5531034/integrated-headsets");

    /// <summary>Headset Tech: preparation.</summary>
    internal static readonly Source PressFitRule = new("PRESS-FIT-RULE", SourceKind.MakerDocument, Confidence.Medium, "Headset Tech: preparation", "Chris King Precision Components", "n.d.", "chrisking.com/tech/tech_headsets");

    /// <summary>Musings on headset reaming tolerances.</summary>
    internal static readonly Source HeadTubeReaming = new("HEAD-TUBE-REAMING", SourceKind.Community, Confidence.Medium, "Musings on headset reaming tolerances", "Velocipede Salon forum", "2020", "www.velocipedesalon.com/forum/showthread.php?t=57562");

    /// <summary>Column of 2 Oct 2022: 1-inch headset, Italian vs JIS (in Japanese).</summary>
    internal static readonly Source OneInchHeadsets = new("ONE-INCH-HEADSETS", SourceKind.Handbook, Confidence.High, "Column of 2 Oct 2022: 1-inch headset, Italian vs JIS (in Japanese)", "Overwheel", "2022", "overwheel.net/ow-column/headset20221002");

    /// <summary>Headset (bicycle part).</summary>
    internal static readonly Source HeadsetArticle = new("HEADSET-ARTICLE", SourceKind.Handbook, Confidence.High, "Headset (bicycle part)", "Wikipedia", "n.d.", "en.wikipedia.org/wiki/Threadless_headset");

    /// <summary>The Paterek Manual, ch. 6, The Front Triangle.</summary>
    internal static readonly Source FrontTriangleManual = new("FRONT-TRIANGLE-MANUAL", SourceKind.Handbook, Confidence.High, "The Paterek Manual, ch. 6, The Front Triangle", "T. Paterek", "n.d.", "timpaterek.com/06fronttriangle.htm");

    /// <summary>44mm.</summary>
    internal static readonly Source HeadTube44 = new("HEAD-TUBE-44", SourceKind.MakerDocument, Confidence.High, "44mm", "Cotic (frame maker) geek pages", "n.d.", "www.cotic.co.uk/geek/page/44mm");

    /// <summary>Comment 13194524.</summary>
    internal static readonly Source HeadTubeComment = new("HEAD-TUBE-COMMENT", SourceKind.Community, Confidence.High, "Comment 13194524", "London Fixed Gear and Single-Speed forum", "n.d.", "lfgss.com/comments/13194524");

    /// <summary>Straight 1-1/8 in steering tube is not actually straight.</summary>
    internal static readonly Source StraightSteerer = new("STRAIGHT-STEERER", SourceKind.Community, Confidence.High, "Straight 1-1/8 in steering tube is not actually straight", "Bicycles Q&A (TransWikia copy)", "3 Apr 2021", "transwikia.com/bicycles/straight-1%e2%85%9b-steering-tube-is-not-actually-straight");

    /// <summary>Crown race won't fit on carbon steerer (quotes the guide of S05).</summary>
    internal static readonly Source CrownRaceGuide = new("CROWN-RACE-GUIDE", SourceKind.Community, Confidence.High, "Crown race won't fit on carbon steerer (quotes the guide of S05)", "RoadBikeReview forums", "2012", "forums.roadbikereview.com/components-wrenching/crown-race-wont-fit-carbon-steerer-274509.html");

    /// <summary>Information and Guides: Measure Headset Bearings.</summary>
    internal static readonly Source BearingSeller = new("BEARING-SELLER", SourceKind.MakerDocument, Confidence.Medium, "Information and Guides: Measure Headset Bearings", "Silly Bike Boy (bearing seller)", "n.d.", "sillybikeboy.co.uk/pages/information-and-guides");

    /// <summary>How to measure sealed headset bearing sizes (copy of CyclingTips, Jul 2021).</summary>
    internal static readonly Source BearingMeasure = new("BEARING-MEASURE", SourceKind.Press, Confidence.Medium, "How to measure sealed headset bearing sizes (copy of CyclingTips, Jul 2021)", "Zeno Cycle Parts", "2021", "zenocycleparts.com/blogs/cyclingtips/how-to-measure-sealed-headset-bearing-sizes");

    /// <summary>Fork cutting and headset.</summary>
    internal static readonly Source ForkCutting = new("FORK-CUTTING", SourceKind.Community, Confidence.Low, "Fork cutting and headset", "allez-allez.net", "11 Jan 2019", "allez-allez.net/2019/01/11/allez-fork-cutting-and-headset/");

    /// <summary>Integrated headsets.</summary>
    internal static readonly Source IntegratedHeadsets = new("INTEGRATED-HEADSETS", SourceKind.MakerDocument, Confidence.High, "Integrated headsets", "R+E Cycles / luggedbikes.com", "n.d.", "luggedbikes.com/articles/integrated-headset/integrated-headset.html");

    /// <summary>Headset or steerer tube from straight to tapered conversion.</summary>
    internal static readonly Source StraightInTapered = new("STRAIGHT-IN-TAPERED", SourceKind.Community, Confidence.Medium, "Headset or steerer tube from straight to tapered conversion", "highlandmist.blogspot.com", "28 Oct 2016", "highlandmist.blogspot.com/2016/10/older-forks-1-18th-in-tapered-headset.html");

    /// <summary>The definitive thread for 1-1/2 internal routing headsets.</summary>
    internal static readonly Source CableHeadsets = new("CABLE-HEADSETS", SourceKind.Community, Confidence.Low, "The definitive thread for 1-1/2 internal routing headsets", "Chinertown forum", "n.d.", "chinertown.com/index.php/topic,5096.0.html");

    /// <summary>1 in versus 1-1/8 in headset.</summary>
    internal static readonly Source OneInchAgainstLarger = new("ONE-INCH-AGAINST-LARGER", SourceKind.Community, Confidence.Medium, "1 in versus 1-1/8 in headset", "rec.bicycles.tech", "10 Dec 2003", "rec.bicycles.tech.narkive.com/bObXV7pe/1-versus-1-1-8-headset");

    /// <summary>TBIS 4210-2:2018 (text of ISO 4210-2:2014), clause 4.7.4 and figure 4.</summary>
    internal static readonly Source SteererRequirement = new("STEERER-REQUIREMENT", SourceKind.Standard, Confidence.High, "TBIS 4210-2:2018 (text of ISO 4210-2:2014), clause 4.7.4 and figure 4", "Taiwan Bicycle Industry Standard", "2018", "chctest.tbnet.org.tw/eBOOK-TBIS/02/EN/files/basic-html/page19.html");

    /// <summary>Bicycle Handlebar and Stem Dimensions (copy of the Sheldon Brown crib sheet).</summary>
    internal static readonly Source BarAndStemTable = new("BAR-AND-STEM-TABLE", SourceKind.Handbook, Confidence.Medium, "Bicycle Handlebar and Stem Dimensions (copy of the Sheldon Brown crib sheet)", "Love City Cycles", "n.d.", "lovecitycycles.com/?page_id=796");

    /// <summary>Which Grip Fits?.</summary>
    internal static readonly Source GripFit = new("GRIP-FIT", SourceKind.MakerDocument, Confidence.Medium, "Which Grip Fits?", "Velogear", "n.d.", "www.velogear.com.au/parts/bike-parts/handlebar-grips/which-grip-fits.html");

    /// <summary>Handlebar sizes (quotes Wikipedia, Stem).</summary>
    internal static readonly Source BarSizes = new("BAR-SIZES", SourceKind.Community, Confidence.Medium, "Handlebar sizes (quotes Wikipedia, Stem)", "Retrobike", "n.d.", "www.retrobike.co.uk/forum/viewtopic.php?f=1&t=255183");

    /// <summary>Handlebar stem size.</summary>
    internal static readonly Source StemSizes = new("STEM-SIZES", SourceKind.Community, Confidence.Medium, "Handlebar stem size", "motorbicycling.com", "8 Sep 2009", "motorbicycling.com/showpost.php?p=105482&postcount=5");

    /// <summary>Quill stem (in Japanese).</summary>
    internal static readonly Source QuillArticle = new("QUILL-ARTICLE", SourceKind.Handbook, Confidence.Medium, "Quill stem (in Japanese)", "jitetan.com bicycle glossary", "n.d.", "jitetan.com/term/quill_stem.html");

    /// <summary>How to Measure a Bicycle Thru-Axle.</summary>
    internal static readonly Source ThruAxleHelp = new("THRU-AXLE-HELP", SourceKind.Handbook, Confidence.Medium, "How to Measure a Bicycle Thru-Axle", "Modern Bike help pages", "undated", "modernbike.com/help-1446");

    /// <summary>How to Measure a Bicycle Thru-Axle.</summary>
    internal static readonly Source ThruAxleMaker = new("THRU-AXLE-MAKER", SourceKind.MakerDocument, Confidence.Medium, "How to Measure a Bicycle Thru-Axle", "Hardlite Components", "2020", "hardlite-components.com/2020/11/19/how-to-measure-a-bicycle-thru-axle/");

    /// <summary>Bicycle Thru-Axle Measuring Guide.</summary>
    internal static readonly Source ThruAxleGuide = new("THRU-AXLE-GUIDE", SourceKind.MakerDocument, Confidence.Medium, "Bicycle Thru-Axle Measuring Guide", "Ti-Parts Titanium", "2025", "tipartstitanium.com/blogs/guides/upgrading-your-thru-axles-read-our-bicycle-thru-axle-measuring-guide");

    /// <summary>Do we need to eliminate the derailleur hanger and embrace UDH.</summary>
    internal static readonly Source UniversalHangerMaker = new("UNIVERSAL-HANGER-MAKER", SourceKind.MakerDocument, Confidence.Medium, "Do we need to eliminate the derailleur hanger and embrace UDH", "ICAN Cycling", "2024", "icancycling.com/en-se/blogs/articles/do-we-need-to-eliminate-the-derailleur-hanger-and-embrace-udh");

    /// <summary>What is the UDH (BikeRadar text, republished).</summary>
    internal static readonly Source UniversalHangerPress = new("UNIVERSAL-HANGER-PRESS", SourceKind.Press, Confidence.Medium, "What is the UDH (BikeRadar text, republished)", "BikeRadar", "2023", "euro.dayfr.com/trends/amp/480702");

    /// <summary>So funktioniert der Universal Derailleur Hanger am Gravelbike.</summary>
    internal static readonly Source UniversalHangerGravel = new("UNIVERSAL-HANGER-GRAVEL", SourceKind.Press, Confidence.Medium, "So funktioniert der Universal Derailleur Hanger am Gravelbike", "Velomotion", "2024", "velomotion.net/2024/08/so-funktioniert-der-universal-derailleur-hanger-am-gravelbike/");

    /// <summary>At last, a universal derailleur hanger is coming.</summary>
    internal static readonly Source UniversalHangerNews = new("UNIVERSAL-HANGER-NEWS", SourceKind.Community, Confidence.Medium, "At last, a universal derailleur hanger is coming", "Escape to the Pyrenees", "2019", "escapetothepyrenees.com/post/at-last-a-universal-derailleur-hanger-is-coming");

    /// <summary>The (possibly) hard-to-find part you should have on hand.</summary>
    internal static readonly Source DirectMountHanger = new("DIRECT-MOUNT-HANGER", SourceKind.Press, Confidence.Medium, "The (possibly) hard-to-find part you should have on hand", "Canadian Cycling Magazine", "2020", "pressreader.com/canada/canadian-cycling-magazine/20200715/282497185958508");

    /// <summary>Posts on unthreaded French dropouts.</summary>
    internal static readonly Source UnthreadedEnds = new("UNTHREADED-ENDS", SourceKind.Community, Confidence.Medium, "Posts on unthreaded French dropouts", "Classic Rendezvous list archive", "2001/2004", "smontanaro.net/CR/2001/6/595 and smontanaro.net/CR/2004/02/0325");

    /// <summary>Derailleur Hangers Demystified.</summary>
    internal static readonly Source HangersDemystified = new("HANGERS-DEMYSTIFIED", SourceKind.MakerDocument, Confidence.Medium, "Derailleur Hangers Demystified", "Red Clover Components", "2014", "redclovercomponents.com/blog/1");

    /// <summary>Bicycle chain explained (width tables).</summary>
    internal static readonly Source ChainWidths = new("CHAIN-WIDTHS", SourceKind.Handbook, Confidence.Medium, "Bicycle chain explained (width tables)", "Cycling Boutique", "2024", "cyclingboutique.in/blogs/news/ultimate-guide-bicycle-chain-explained");

    /// <summary>Chains.</summary>
    internal static readonly Source ChainCatalogue = new("CHAIN-CATALOGUE", SourceKind.Handbook, Confidence.Medium, "Chains", "Velogear", "undated", "velogear.com.au/catalog/Chains-216-1.html");

    /// <summary>Chain sizes.</summary>
    internal static readonly Source ChainSizes = new("CHAIN-SIZES", SourceKind.Handbook, Confidence.Medium, "Chain sizes", "Wikibooks", "undated", "en.wikibooks.org/wiki/Bicycles/Maintenance_and_Repair/Chains/Chain_sizes");

    /// <summary>New Shifters, and Nine Over Eight Gearing? (quotes the sprocket crib sheet).</summary>
    internal static readonly Source SprocketSpacing = new("SPROCKET-SPACING", SourceKind.Community, Confidence.Medium, "New Shifters, and Nine Over Eight Gearing? (quotes the sprocket crib sheet)", "2nd-gear.blogspot.com", "2017", "2nd-gear.blogspot.com/2017/03/new-shifters-and-nine-over-eight-gearing.html");

    /// <summary>Bicycle Crank/Chainring Bolt Circle Diameter Crib Sheet.</summary>
    internal static readonly Source BoltCircles = new("BOLT-CIRCLES", SourceKind.Handbook, Confidence.Medium, "Bicycle Crank/Chainring Bolt Circle Diameter Crib Sheet", "sheldonbrown.com", "undated", "sheldonbrown.com/cribsheet-bcd.html");

    /// <summary>Understanding Chainring Bolt-hole Patterns.</summary>
    internal static readonly Source BoltHolePatterns = new("BOLT-HOLE-PATTERNS", SourceKind.Handbook, Confidence.Low, "Understanding Chainring Bolt-hole Patterns", "sheldonbrown.com", "undated", "sheldonbrown.com/bolt-hole-patterns.html");

    /// <summary>Understanding Chainring Measurements.</summary>
    internal static readonly Source RingMeasuring = new("RING-MEASURING", SourceKind.Handbook, Confidence.Medium, "Understanding Chainring Measurements", "Modern Bike help pages", "undated", "modernbike.com/help-117");

    /// <summary>Cranks (BCD and smallest ring).</summary>
    internal static readonly Source CrankPage = new("CRANK-PAGE", SourceKind.MakerDocument, Confidence.Medium, "Cranks (BCD and smallest ring)", "Rivendell", "undated", "rivbike.com/pages/cranks");

    /// <summary>Chainring sizing (110 offset-hole warning).</summary>
    internal static readonly Source OffsetHole = new("OFFSET-HOLE", SourceKind.Community, Confidence.Medium, "Chainring sizing (110 offset-hole warning)", "dotbike blog", "2010", "blog.dotbike.com/2010_07_01_archive.html");

    /// <summary>How to determine the bolt circle diameter for a new chainring.</summary>
    internal static readonly Source BoltCircleHowTo = new("BOLT-CIRCLE-HOW-TO", SourceKind.Community, Confidence.Low, "How to determine the bolt circle diameter for a new chainring", "The Cycle Mechanic", "undated", "thecyclemechanic.co.uk/knowledge-hub/bolt-circle-diameter/");

    /// <summary>Chainring decoder.</summary>
    internal static readonly Source RingDecoder = new("RING-DECODER", SourceKind.Community, Confidence.Medium, "Chainring decoder", "trbike.blogspot.com", "2025", "trbike.blogspot.com/2025/12/chainring-decoder.html");

    /// <summary>Standard DUB: cos'e e come funziona.</summary>
    internal static readonly Source RingOffsets = new("RING-OFFSETS", SourceKind.Press, Confidence.Medium, "Standard DUB: cos'e e come funziona", "cicloblog.com", "2018", "cicloblog.com/sram-dub-cose-e-come-funziona/");

    /// <summary>Crankset (crank lengths).</summary>
    internal static readonly Source CrankLengths = new("CRANK-LENGTHS", SourceKind.Handbook, Confidence.Medium, "Crankset (crank lengths)", "Wikipedia mirror", "undated", "wiki-gateway.eudic.net/wikipedia_en/Bicycle_crank.html");

    /// <summary>[Standards] Road and Gravel Drivetrains - Cranks and BB's.</summary>
    internal static readonly Source CrankTable = new("CRANK-TABLE", SourceKind.Community, Confidence.Medium, "[Standards] Road and Gravel Drivetrains - Cranks and BB's", "customframeforum.com", "2020s", "forum.customframeforum.com/t/standards-road-and-gravel-drivetrains-cranks-and-bbs/814");

    /// <summary>Front Derailleurs.</summary>
    internal static readonly Source FrontDerailleurs = new("FRONT-DERAILLEURS", SourceKind.MakerDocument, Confidence.Medium, "Front Derailleurs", "Rivendell", "undated", "rivbike.com/pages/front-derailleurs");

    /// <summary>Shifting correctly: adjust the front derailleur.</summary>
    internal static readonly Source FrontDerailleurCare = new("FRONT-DERAILLEUR-CARE", SourceKind.Press, Confidence.Medium, "Shifting correctly: adjust the front derailleur", "Bike Magazin", "2020s", "bike-magazin.de/en/gearstick-or-drive/shifting-correctly-adjust-the-shimano-front-derailleur/");

    /// <summary>Front derailleur types and mounts explained.</summary>
    internal static readonly Source FrontDerailleurTypes = new("FRONT-DERAILLEUR-TYPES", SourceKind.Press, Confidence.Medium, "Front derailleur types and mounts explained", "BikeRadar", "2022", "bikeradar.com/features/sram-and-shimano-front-derailleur-types-and-mounts-explained/");

    /// <summary>Derailleurs (direct-mount hole spacing).</summary>
    internal static readonly Source FrontMountSpacing = new("FRONT-MOUNT-SPACING", SourceKind.Community, Confidence.Medium, "Derailleurs (direct-mount hole spacing)", "Hulk Bike", "undated", "hulkbike.com/blog/deraillieur/");

    /// <summary>Capacity of the rear derailleur.</summary>
    internal static readonly Source DerailleurCapacity = new("DERAILLEUR-CAPACITY", SourceKind.Handbook, Confidence.Medium, "Capacity of the rear derailleur", "defietssite.nl", "undated", "defietssite.nl/capacity-the-rear-derailleur/");

    /// <summary>ISCG glossary entry.</summary>
    internal static readonly Source GuideTabs = new("GUIDE-TABS", SourceKind.Handbook, Confidence.Medium, "ISCG glossary entry", "jitetan.com", "undated", "jitetan.com/term/iscg.html");

    /// <summary>Double chain-guide fitting on an external-cup crank.</summary>
    internal static readonly Source GuideOnBracket = new("GUIDE-ON-BRACKET", SourceKind.Community, Confidence.Medium, "Double chain-guide fitting on an external-cup crank", "rideitfixit.blogspot.com", "2012", "rideitfixit.blogspot.com/2012/04/double-chainguide-cautionary-tale.html");

    /// <summary>Specifications changed without notice (shallower first-position sprocket).</summary>
    internal static readonly Source TallSplines = new("TALL-SPLINES", SourceKind.Community, Confidence.Low, "Specifications changed without notice (shallower first-position sprocket)", "pedaldamnit.blogspot.com", "2006", "pedaldamnit.blogspot.com/2006/08/specifications-changed-without-notice.html");

    /// <summary>Fixed gear without lockring.</summary>
    internal static readonly Source FixedLockring = new("FIXED-LOCKRING", SourceKind.Community, Confidence.Low, "Fixed gear without lockring", "movimentofisso.it", "undated", "movimentofisso.it/biciclette_en.aspx?IdProd=42");

    /// <summary>Bicycles/Maintenance and Repair/Gear-changing Dimensions (equation; tables not readable).</summary>
    internal static readonly Source GearEquation = new("GEAR-EQUATION", SourceKind.Handbook, Confidence.Medium, "Bicycles/Maintenance and Repair/Gear-changing Dimensions (equation; tables not readable)", "Wikibooks", "undated", "en.wikibooks.org/wiki/Bicycles/Maintenance_and_Repair/Gear-changing_Dimensions");

    /// <summary>10 vs 11 speed cassette.</summary>
    internal static readonly Source PullBlog = new("PULL-BLOG", SourceKind.Community, Confidence.Low, "10 vs 11 speed cassette", "hastiny.blogg.se", "2023", "hastiny.blogg.se/2023/february/10-vs-11-speed-cassette.html");

    /// <summary>Science Behind the Magic: Drivetrain Compatibility (definitions; tables not readable).</summary>
    internal static readonly Source PullScience = new("PULL-SCIENCE", SourceKind.Handbook, Confidence.Medium, "Science Behind the Magic: Drivetrain Compatibility (definitions; tables not readable)", "Art's Cyclery", "2013", "scribd.com/document/392071911");

    /// <summary>Podcast on Linkglide and CUES (transcript copy).</summary>
    internal static readonly Source ThickPlates = new("THICK-PLATES", SourceKind.Press, Confidence.Medium, "Podcast on Linkglide and CUES (transcript copy)", "Pinkbike podcast", "2023", "angelobike.org/the-pinkbike-podcast-shimano-linkglide-cues-explained.html");

    /// <summary>Chainline (10-speed worked example quoting the crib sheet).</summary>
    internal static readonly Source TenSpeedExample = new("TEN-SPEED-EXAMPLE", SourceKind.Community, Confidence.Medium, "Chainline (10-speed worked example quoting the crib sheet)", "ti10x.blogspot.com", "2012", "ti10x.blogspot.com/2012/10/chainline.html");

    /// <summary>Frame/hub spacing and sprocket spacing crib sheet.</summary>
    internal static readonly Source SpacingCribSheet = new("SPACING-CRIB-SHEET", SourceKind.Handbook, Confidence.Medium, "Frame/hub spacing and sprocket spacing crib sheet", "sheldonbrown.com", "2018 or later", "sheldonbrown.com/cribsheet-spacing.html");

    /// <summary>Mutant chains, compatibility and cog pitch.</summary>
    internal static readonly Source CogPitch = new("COG-PITCH", SourceKind.Community, Confidence.Low, "Mutant chains, compatibility and cog pitch", "bikeblogordie.com", "2017", "bikeblogordie.com/2017/10/mutant-chains-compatibility-and-cog.html?m=1");

    /// <summary>Cassette spacers (forum).</summary>
    internal static readonly Source CassetteSpacers = new("CASSETTE-SPACERS", SourceKind.Community, Confidence.Low, "Cassette spacers (forum)", "Bike Forums", "2015", "m.bikeforums.net/printthread.php?s=83d36dc8b858ce35255f8553bdea9831&t=1028740");

    /// <summary>Kettenlinienstandards (Tabelle).</summary>
    internal static readonly Source ChainlineTable = new("CHAINLINE-TABLE", SourceKind.Handbook, Confidence.Medium, "Kettenlinienstandards (Tabelle)", "WikiPedalia", "undated", "wikipedalia.com");

    /// <summary>Crank chainline summary (Japanese).</summary>
    internal static readonly Source ChainlineNotes = new("CHAINLINE-NOTES", SourceKind.Community, Confidence.Low, "Crank chainline summary (Japanese)", "note.com", "2024", "note.com/bikes/n/n12047c044d0b");

    /// <summary>Technical FAQ: chain lines on road disc brake bikes.</summary>
    internal static readonly Source ChainlineRoadDisc = new("CHAINLINE-ROAD-DISC", SourceKind.Press, Confidence.Medium, "Technical FAQ: chain lines on road disc brake bikes", "Velo (Outside)", "2020", "velo.outsideonline.com/road/road-racing/technical-faq-chainline-on-road-disc-brake-bikes/");

    /// <summary>Selecting the right axle for your bike.</summary>
    internal static readonly Source OffsetAxle = new("OFFSET-AXLE", SourceKind.MakerDocument, Confidence.Medium, "Selecting the right axle for your bike", "Rotor America", "2024", "rotoramerica.com/pages/selecting-the-right-axle-for-your-bike");

    /// <summary>What is chainline (chain-guide maker's help).</summary>
    internal static readonly Source ChainlineHelp = new("CHAINLINE-HELP", SourceKind.MakerDocument, Confidence.Medium, "What is chainline (chain-guide maker's help)", "The Hive", "undated", "service.bythehive.com/Guide/diff/step/32/222");

    /// <summary>55mm Chainline.</summary>
    internal static readonly Source Chainline55 = new("CHAINLINE-55", SourceKind.Press, Confidence.Medium, "55mm Chainline", "The Radavist", "2023", "theradavist.com/55mm_chainline");

    /// <summary>Chain line: 49.25, 50.25, 52.25, 55.25 mm cranks.</summary>
    internal static readonly Source ChainlineRange = new("CHAINLINE-RANGE", SourceKind.MakerDocument, Confidence.Medium, "Chain line: 49.25, 50.25, 52.25, 55.25 mm cranks", "First Components", "undated", "firstcomponents.com/de/chain-line/");

    /// <summary>Rear sprocket chainline measuring formula (toolmaker's page, quoted).</summary>
    internal static readonly Source ChainlineFormula = new("CHAINLINE-FORMULA", SourceKind.MakerDocument, Confidence.Medium, "Rear sprocket chainline measuring formula (toolmaker's page, quoted)", "Hozan", "undated", "quoted at medaka.5ch.net/test/read.cgi/kankon/1524656325/25");

    /// <summary>Splined bottom bracket, product text.</summary>
    internal static readonly Source SplinedBracketText = new("SPLINED-BRACKET-TEXT", SourceKind.MakerDocument, Confidence.Low, "Splined bottom bracket, product text", "bigamart (shop, maker's text)", "undated", "trial.bigamart.com/product/shimano-unisexs-bbes300c13-bike-parts-other-one-size");

    /// <summary>Why are tires sometimes narrower than their listed size?.</summary>
    internal static readonly Source WidthTolerance = new("WIDTH-TOLERANCE", SourceKind.MakerDocument, Confidence.Medium, "Why are tires sometimes narrower than their listed size?", "Schwalbe help centre", "read 2026-11", "schwalbetires.crisp.help/en-us/article/why-are-tires-sometimes-narrower-than-their-listed-size-w7ntwm");

    /// <summary>16 CFR 1512.11 Requirements for wheels.</summary>
    internal static readonly Source WheelRegulation = new("WHEEL-REGULATION", SourceKind.Standard, Confidence.High, "16 CFR 1512.11 Requirements for wheels", "US CPSC, eCFR", "2024-2026", "lexbuild.dev/ecfr/title-16/chapter-II/part-1512/section-1512.11");

    /// <summary>EN 14781 clause 4.10.2 as quoted in a forum.</summary>
    internal static readonly Source RacingClearance = new("RACING-CLEARANCE", SourceKind.Community, Confidence.Medium, "EN 14781 clause 4.10.2 as quoted in a forum", "lfgss.com quoting EN 14781:2005", "2005", "lfgss.com/comments/13927689");

    /// <summary>Operation manual, wheels check.</summary>
    internal static readonly Source WheelsManual = new("WHEELS-MANUAL", SourceKind.MakerDocument, Confidence.Medium, "Operation manual, wheels check", "bicycle maker's operating manual (Ghost)", "c. 2012", "38.142.81.21:8001/manual/ghost-bikes/amr/operation-manual-english/page-21.html");

    /// <summary>A nut of 10 mm on an axle of 3/8 in.</summary>
    internal static readonly Source NutStripped = new("NUT-STRIPPED", SourceKind.Community, Confidence.Low, "What's a Guy Gotta Do to Get a Nut in this Town?", "blog.cosmocatalano.com", "undated", "blog.cosmocatalano.com");

    /// <summary>Suspension fork maintenance.</summary>
    internal static readonly Source LargeFrontTyre = new("LARGE-FRONT-TYRE", SourceKind.MakerDocument, Confidence.Medium, "Suspension Fork Maintenance (bicycle manual, p. 63)", "bicycle maker's manual (Felt)", "undated", "easymanua.ls/felt/bicycle/manual?p=63");

    /// <summary>Bottom Bracket Threading and Other Specifications.</summary>
    internal static readonly Source ShellThreads = new("SHELL-THREADS", SourceKind.Handbook, Confidence.Medium, "Bottom Bracket Threading and Other Specifications", "BikeRaceInfo", "undated", "bikeraceinfo.com/tech/bottom-brackets.html");

    /// <summary>Unthreaded Bicycle Bottom Bracket Crib Sheet.</summary>
    internal static readonly Source UnthreadedShells = new("UNTHREADED-SHELLS", SourceKind.Handbook, Confidence.High, "Unthreaded Bicycle Bottom Bracket Crib Sheet", "sheldonbrown.com (J. Allen)", "Apr 2014", "sheldonbrown.com/cribsheet-unthreaded-bottombrackets.html");

    /// <summary>DIN ISO 6696 (ISO 6696:1989), scope.</summary>
    internal static readonly Source ShellThreadScope = new("SHELL-THREAD-SCOPE", SourceKind.Standard, Confidence.Medium, "DIN ISO 6696 (ISO 6696:1989), scope", "DIN / GlobalSpec", "Jul 2016", "standards.globalspec.com/std/10033742/din-iso-6696");

    /// <summary>On cycle threads.</summary>
    internal static readonly Source CycleThreads = new("CYCLE-THREADS", SourceKind.Community, Confidence.Medium, "On cycle threads", "grubb1937.blogspot.com", "Aug 2013", "grubb1937.blogspot.com/2013/08/on-cycle-threads.html");

    /// <summary>24 mm Spacer Chart, P95-002-01108B-002.</summary>
    internal static readonly Source SpacerChart24 = new("SPACER-CHART-24", SourceKind.MakerDocument, Confidence.Medium, "24 mm Spacer Chart, P95-002-01108B-002", "Rotor (crank maker)", "2023", "cdn.shopify.com/s/files/1/2338/5139/files/24mm_Spacer_Chart.pdf");

    /// <summary>Spacers chart, 30 mm road axle (crro1004).</summary>
    internal static readonly Source SpacerChart30 = new("SPACER-CHART-30", SourceKind.MakerDocument, Confidence.Medium, "Spacers chart, 30 mm road axle (crro1004)", "Rotor (crank maker)", "undated", "cdn.shopify.com/s/files/1/0594/4193/8623/files/crro1004.pdf");

    /// <summary>28.99 mm spindle MTB bottom bracket overview.</summary>
    internal static readonly Source Overview2899 = new("OVERVIEW-28-99", SourceKind.MakerDocument, Confidence.Medium, "28.99 mm spindle MTB bottom bracket overview", "SRAM", "undated", "cdn.shopify.com/s/files/1/0279/0106/7395/files/Sram_Dub_MTB_BB_Overview.pdf");

    /// <summary>Bottom Bracket "standards".</summary>
    internal static readonly Source BracketStandards = new("BRACKET-STANDARDS", SourceKind.Community, Confidence.Medium, "Bottom Bracket \"standards\"", "dansbikestuff.blogspot.com", "12 Nov 2013", "dansbikestuff.blogspot.com/2013/11/bottom-bracket-standards.html");

    /// <summary>MOBI - Bottom Bracket "Standards".</summary>
    internal static readonly Source BracketTable = new("BRACKET-TABLE", SourceKind.Handbook, Confidence.Medium, "MOBI > Bottom Bracket \"Standards\"", "pardo.net", "undated", "pardo.net/bike/pic/mobi/b.bottom-bracket-standards.html");

    /// <summary>Making sense of bottom brackets, part 2.</summary>
    internal static readonly Source BracketSense = new("BRACKET-SENSE", SourceKind.Community, Confidence.Medium, "Making sense of bottom brackets, part 2", "The Accidental Randonneur", "undated", "accidentalrandonneur.wordpress.com/tag/bb92/");

    /// <summary>Three Common Bottom Bracket Misconceptions.</summary>
    internal static readonly Source BracketMisconceptions = new("BRACKET-MISCONCEPTIONS", SourceKind.MakerDocument, Confidence.Medium, "Three Common Bottom Bracket Misconceptions", "Wheels Manufacturing", "undated", "wheelsmfg.com/blogs/bottom-brackets?page=2");

    /// <summary>What you should know about cranks and bottom brackets.</summary>
    internal static readonly Source CranksAndBrackets = new("CRANKS-AND-BRACKETS", SourceKind.MakerDocument, Confidence.Medium, "What you should know about cranks & bottom brackets", "Open Cycle", "18 Aug 2016", "up.opencycle.com/updates/what-you-should-know-about-cranks--bottom-brackets");

    /// <summary>Bottom bracket standards in detail.</summary>
    internal static readonly Source BracketDetail = new("BRACKET-DETAIL", SourceKind.Press, Confidence.Medium, "Bottom bracket standards in detail", "Cycletechreview", "2012", "cycletechreview.com/2012/features/bottom-bracket-standards-detail/6");

    /// <summary>The complete guide to bottom bracket standards.</summary>
    internal static readonly Source BracketGuide = new("BRACKET-GUIDE", SourceKind.Press, Confidence.Medium, "The complete guide to bottom bracket standards", "BikeRadar", "14 Mar 2019", "www.bikeradar.com/advice/buyers-guides/the-complete-guide-to-bottom-bracket-standards/");

    /// <summary>PSA: T47 internal BB width is now 85.5 mm.</summary>
    internal static readonly Source T47Width = new("T47-WIDTH", SourceKind.Community, Confidence.Medium, "PSA: T47 internal BB width is now 85.5 mm", "Custom Frame Forum", "undated", "forum.customframeforum.com/t/psa-t47-internal-bb-width-is-now-85-5mm/1980");

    /// <summary>T47-77 asymmetric bottom bracket spacing adaptation.</summary>
    internal static readonly Source T47Asymmetric = new("T47-ASYMMETRIC", SourceKind.MakerDocument, Confidence.Medium, "T47-77 asymmetric bottom bracket spacing adaptation", "Felt Bicycles", "undated", "feltbicycles.com/blogs/news/felt-bicycles-unveils-t47-77-asymmetric-bottom-bracket-spacing-adaptation-1");

    /// <summary>T47 threaded bottom brackets, but with a twist.</summary>
    internal static readonly Source T47Twist = new("T47-TWIST", SourceKind.Press, Confidence.Medium, "T47 threaded bottom brackets, but with a twist", "Velo / CyclingTips", "Jun 2019", "velo.outsideonline.com/2019/06/trek-t47-threaded-bottom-brackets/");

    /// <summary>Threaded #12: the woes of T47 bottom brackets.</summary>
    internal static readonly Source T47Woes = new("T47-WOES", SourceKind.Press, Confidence.Medium, "Threaded #12: the woes of T47 bottom brackets", "Escape Collective", "28 Mar 2024", "escapecollective.com/threaded-12-the-woes-of-t47-bottom-brackets/");

    /// <summary>T47: the good, the bad and the availability.</summary>
    internal static readonly Source T47Dimensions = new("T47-DIMENSIONS", SourceKind.MakerDocument, Confidence.Medium, "T47: the good, the bad and the availability", "Kogel (bottom-bracket maker)", "undated", "www.kogel.cc/blogs/kbba/t47-the-good-the-bad-and-the-availability");

    /// <summary>BMX Bottom Brackets.</summary>
    internal static readonly Source BmxBrackets = new("BMX-BRACKETS", SourceKind.MakerDocument, Confidence.Medium, "BMX Bottom Brackets", "SkatePro", "undated", "skatepro.com.au/599-42431.htm");

    /// <summary>Bicycle spindle options.</summary>
    internal static readonly Source SpindleOptions = new("SPINDLE-OPTIONS", SourceKind.MakerDocument, Confidence.Medium, "Bicycle spindle options", "Power Meter City FAQ", "undated", "powermetercity.com/faq/bicycle-spindle-options-24-mm-gxp-30-mm-dub-and-m30/");

    /// <summary>New cranks and bottom brackets with a 28.99 mm spindle.</summary>
    internal static readonly Source SpindleLaunch = new("SPINDLE-LAUNCH", SourceKind.Press, Confidence.Medium, "New cranks and bottom brackets with a 28.99 mm spindle", "Pinkbike", "16 Jan 2018", "www.pinkbike.com/news/srams-new-dub-cranks-and-bottom-brackets-first-look.html");

    /// <summary>28.99 mm spindle system launch.</summary>
    internal static readonly Source SpindleSystem = new("SPINDLE-SYSTEM", SourceKind.Press, Confidence.Medium, "28.99 mm spindle system launch", "Enduro MTB", "2018", "enduro-mtb.com/en/sram-dub-system/");

    /// <summary>Stepped 24/22 vs 28.99 spindle: key differences.</summary>
    internal static readonly Source SteppedSpindle = new("STEPPED-SPINDLE", SourceKind.Community, Confidence.Low, "Stepped 24/22 vs 28.99 spindle: key differences", "roadbikemaintenance.com", "undated", "www.roadbikemaintenance.com/gxp-vs-dub-key-differences-every-cyclist-should-know");

    /// <summary>Square taper bottom brackets.</summary>
    internal static readonly Source TaperMeasured = new("TAPER-MEASURED", SourceKind.Community, Confidence.Medium, "Square taper bottom brackets", "moultoneer.wordpress.com", "17 Mar 2022", "moultoneer.wordpress.com/2022/03/17/square-taper-bottom-brackets/");

    /// <summary>JIS taper, ISO taper (in Japanese).</summary>
    internal static readonly Source TaperSums = new("TAPER-SUMS", SourceKind.Community, Confidence.Low, "JIS taper, ISO taper (in Japanese)", "replica2st", "Oct 2014", "replica2st.cocolog-nifty.com/diet/2014/10/post-08b6.html");

    /// <summary>Interchangeability of square-taper interfaces (in German).</summary>
    internal static readonly Source TaperExchange = new("TAPER-EXCHANGE", SourceKind.Handbook, Confidence.Medium, "Interchangeability of square-taper interfaces (in German)", "wikipedalia.de", "undated", "wikipedalia.de/index.php?title=Auswechselbarkeit_von_Vierkant-Kurbelaufnahmesystemen_bei_Innenlagern");

    /// <summary>Post 1474018 (in German).</summary>
    internal static readonly Source SpacerPost = new("SPACER-POST", SourceKind.Community, Confidence.Medium, "Post 1474018 (in German)", "globike.net", "undated", "globike.net/posts/1474018");

    /// <summary>Bike hack: spacer upgrades.</summary>
    internal static readonly Source SpacerUpgrades = new("SPACER-UPGRADES", SourceKind.Press, Confidence.Medium, "Bike hack: spacer upgrades", "Bike Magazine", "undated", "www.bikemag.com/gear-features/bike-hack-spacer-upgrades/");

    /// <summary>External-cup crank spacer table.</summary>
    internal static readonly Source CupSpacers = new("CUP-SPACERS", SourceKind.Handbook, Confidence.Medium, "External-cup crank spacer table", "jitetan.com", "undated", "jitetan.com/term/hollowtech_2.html");

    /// <summary>Octalink glossary entry.</summary>
    internal static readonly Source ShortAndLongSplines = new("SHORT-AND-LONG-SPLINES", SourceKind.Handbook, Confidence.Medium, "Octalink glossary entry", "jitetan.com", "undated", "jitetan.com/term/octalink.html");

    /// <summary>Bottom bracket: interface types.</summary>
    internal static readonly Source SpindleTypes = new("SPINDLE-TYPES", SourceKind.Community, Confidence.Medium, "Bottom bracket: interface types", "bike-mode.blogspot.com", "2009", "bike-mode.blogspot.com/2009/04/");

    /// <summary>Splined Bottom Brackets.</summary>
    internal static readonly Source SplinedBrackets = new("SPLINED-BRACKETS", SourceKind.Press, Confidence.Medium, "Splined Bottom Brackets", "Urban Velo issue 17", "2010", "urbanvelo.org/issue17/p70-71.html");

    /// <summary>Spindle designation of the 10-spline standard.</summary>
    internal static readonly Source TenSplineFaq = new("TEN-SPLINE-FAQ", SourceKind.Community, Confidence.Medium, "Spindle designation of the 10-spline standard", "experts123 (copy of the standard's FAQ)", "undated", "experts123.com/q/why-use-the-spindle-designation-number-instead-of-the-overall-length.html");

    /// <summary>What are cottered cranks? (repeats a cotter-pin repair article).</summary>
    internal static readonly Source CotteredCranks = new("COTTERED-CRANKS", SourceKind.Community, Confidence.Low, "What are cottered cranks? (repeats a cotter-pin repair article)", "swirlzcupcakes.com (copy)", "undated", "swirlzcupcakes.com/qa/what-are-cottered-cranks");

    /// <summary>35 x 1.</summary>
    internal static readonly Source SwissThread = new("SWISS-THREAD", SourceKind.Community, Confidence.Medium, "35 x 1...", "blackmountaincycles.blogspot.com (frame maker and shop)", "2008", "blackmountaincycles.blogspot.com/2008/12/35-x-1.html");

    /// <summary>Besonderheiten bei Gewinden / Austauschbarkeit bei aelteren Fahrraedern eines Herstellers (in German, translation of a reference article).</summary>
    internal static readonly Source ThreadPeculiarities = new("THREAD-PECULIARITIES", SourceKind.Handbook, Confidence.Medium, "Besonderheiten bei Gewinden / Austauschbarkeit bei aelteren Fahrraedern eines Herstellers (in German, translation of a reference article)", "WikiPedalia", "undated", "wikipedalia.de/index.php?diff=next&oldid=12604&title=Besonderheiten_bei_Gewinden%2FAustauschbarkeit_bei_%C3%A4lteren_Raleigh_Fahrr%C3%A4dern");

    /// <summary>OSBB engineering guide.</summary>
    internal static readonly Source OsbbGuide = new("OSBB-GUIDE", SourceKind.MakerDocument, Confidence.Low, "OSBB engineering guide", "Hambini (bottom-bracket maker)", "undated", "www.hambini.com/specialized-osbb-engineering-guide/");

    /// <summary>OSBB explained.</summary>
    internal static readonly Source OsbbExplained = new("OSBB-EXPLAINED", SourceKind.MakerDocument, Confidence.Low, "OSBB explained", "Kogel (bottom-bracket maker)", "undated", "kogel.cc/blogs/kbba/specialized-osbb-explained");

    /// <summary>Road bike bottom bracket standards.</summary>
    internal static readonly Source RoadBrackets = new("ROAD-BRACKETS", SourceKind.Press, Confidence.Medium, "Road bike bottom bracket standards", "Cycling Weekly", "undated", "www.cyclingweekly.com/news/product-news/road-bike-bottom-bracket-standards-371270");

    /// <summary>Basic Thread Concepts.</summary>
    internal static readonly Source ThreadConcepts = new("THREAD-CONCEPTS", SourceKind.MakerDocument, Confidence.Medium, "Basic Thread Concepts", "Park Tool", "undated", "www.parktool.com/en-us/blog/repair-help/basic-thread-concepts");

    /// <summary>Attachment of the pedals to the cranks.</summary>
    internal static readonly Source PedalAttachment = new("PEDAL-ATTACHMENT", SourceKind.Handbook, Confidence.Medium, "Attachment of the pedals to the cranks", "defietssite.nl", "undated", "defietssite.nl/attachment-the-pedals-to-the-cranks/?lang=en");

    /// <summary>Pedal threads (French vs English).</summary>
    internal static readonly Source PedalThreadList = new("PEDAL-THREAD-LIST", SourceKind.Community, Confidence.Medium, "Pedal threads (French vs English)", "Classic Rendezvous list archive", "2003", "smontanaro.net/CR/2003/05/0420");

    /// <summary>Pedal (glossary quote: one-piece crank thread).</summary>
    internal static readonly Source OnePiecePedals = new("ONE-PIECE-PEDALS", SourceKind.Community, Confidence.Medium, "Pedal (glossary quote: one-piece crank thread)", "LFGSS forum quoting a glossary", "undated", "lfgss.com/comments/8473736");

    /// <summary>ISO 5775-1:2014 Tyre designations and dimensions.</summary>
    internal static readonly Source Iso5775Part1Sample = new("ISO-5775-PART-1-SAMPLE", SourceKind.Standard, Confidence.Medium, "ISO 5775-1:2014 Tyre designations and dimensions (sample pages)", "iTeh / ISO", "2014", "theiteh.com/catalog/standards/iso/4ef82e2f-6586-40b4-91e7-bf880419cd41/iso-5775-1-2014");

    /// <summary>Tyre sizes, with a tube of another size in a tyre.</summary>
    internal static readonly Source TubeMismatch = new("TUBE-MISMATCH", SourceKind.Community, Confidence.Low, "Tyre sizes (451 tube in a 406 tyre)", "tadpolerider2.wordpress.com", "read 2026-11", "tadpolerider2.wordpress.com/tag/tire-sizes/");

    /// <summary>The ultimate creaky bottom bracket fix.</summary>
    internal static readonly Source CreakyBracket = new("CREAKY-BRACKET", SourceKind.Press, Confidence.Medium, "The ultimate creaky bottom bracket fix", "BikeRadar", "4 Nov 2014", "www.bikeradar.com/features/angryasian-the-ultimate-creaky-bottom-bracket-fix/");

    /// <summary>One adapter for an in-shell bearing frame: a mistake.</summary>
    internal static readonly Source ShellAdapterReport = new("SHELL-ADAPTER-REPORT", SourceKind.Community, Confidence.Low, "One adapter for an in-shell bearing frame: a mistake", "Chinertown forum", "n.d.", "chinertown.com/index.php/topic,898.0.html");

    /// <summary>Seat post saga.</summary>
    internal static readonly Source BinderReport = new("BINDER-REPORT", SourceKind.Community, Confidence.Low, "Seat post saga", "ryansrebuilds.blogspot.com", "Apr 2019", "ryansrebuilds.blogspot.com/2019/04/novara-randonee-seat-post-saga.html");

    /// <summary>Technical FAQ: cracked carbon seatposts.</summary>
    internal static readonly Source CarbonPostCracks = new("CARBON-POST-CRACKS", SourceKind.Press, Confidence.Medium, "Technical FAQ: cracked carbon seatposts", "VeloNews", "n.d.", "www.velonews.com/gear/technical-faq-cracked-carbon-seatposts/");

    /// <summary>26.0 and 25.4 stems interchangeable?.</summary>
    internal static readonly Source BarMismatch = new("BAR-MISMATCH", SourceKind.Community, Confidence.Medium, "26.0 and 25.4 stems interchangeable?", "The Paceline Forum", "18 Sep 2009", "forums.thepaceline.net/archive/index.php/t-64417.html");

    /// <summary>ISO 5775 (older copy of the encyclopaedia article).</summary>
    internal static readonly Source OlderIso5775 = new("OLDER-ISO-5775", SourceKind.Handbook, Confidence.Medium, "ISO 5775 (older copy of the encyclopaedia article)", "en-academic.com mirror of Wikipedia", "c. 2010", "en-academic.com/dic.nsf/enwiki/884038");

    /// <summary>2020 ETRTO standards for bike tires.</summary>
    internal static readonly Source MeasuringRims = new("MEASURING-RIMS", SourceKind.Handbook, Confidence.Medium, "2020 ETRTO standards for bike tires", "Vittoria", "2019/2020", "www.vittoria.com/us/etrto-bike-tires");

    /// <summary>Crown race won't fit on fork.</summary>
    internal static readonly Source RaceAndSeatPair = new("RACE-AND-SEAT-PAIR", SourceKind.Community, Confidence.Low, "Crown race won't fit on fork", "MTBR forum", "c. 2007", "mtbr.com");

    /// <summary>How to Measure Headset Bearings.</summary>
    internal static readonly Source BearingAngles = new("BEARING-ANGLES", SourceKind.MakerDocument, Confidence.Medium, "How to Measure Headset Bearings", "Aire Velo Bearings", "n.d.", "www.airevelobearings.com/a-guide-to-how-to-measure-headset-bearings/");

    /// <summary>Building a bike from parts 2: headset types (table, in Japanese).</summary>
    internal static readonly Source HeadsetTypes = new("HEADSET-TYPES", SourceKind.Community, Confidence.Medium, "Building a bike from parts 2: headset types (table, in Japanese)", "shobota.com", "n.d.", "www.shobota.com/buildbike_002.html");

    /// <summary>The cutting tool problem (tool maker's cutters listed with diameters).</summary>
    internal static readonly Source HeadTubeCutters = new("HEAD-TUBE-CUTTERS", SourceKind.Community, Confidence.Medium, "The cutting tool problem (tool maker's cutters listed with diameters)", "peterverdone.com", "n.d.", "www.peterverdone.com/the-cutting-tool-problem-and-park-tools/");

    /// <summary>Notes on headset standards (in Japanese).</summary>
    internal static readonly Source SteererNotes = new("STEERER-NOTES", SourceKind.Community, Confidence.Medium, "Notes on headset standards (in Japanese)", "note.com okusan_364364", "n.d.", "note.com/okusan_364364/n/nd56c8f04e038");

    /// <summary>Out. Of. Shape. (crown race seat milling).</summary>
    internal static readonly Source RaceMilling = new("RACE-MILLING", SourceKind.Community, Confidence.Medium, "Out. Of. Shape. (crown race seat milling)", "homebrewedbikes.blogspot.com", "2011", "homebrewedbikes.blogspot.com/2011/10/out-of-shape.html");

    /// <summary>Headset bearings of a road frame (measured).</summary>
    internal static readonly Source FrameBearingsMeasured = new("FRAME-BEARINGS-MEASURED", SourceKind.Community, Confidence.Low, "Headset bearings of a road frame (measured)", "midlandscyclist.blogspot.com", "2014", "midlandscyclist.blogspot.com/2014/04/giant-defy-headset-bearings.html");

    /// <summary>Head bearings of two carbon road frames (forum, measured).</summary>
    internal static readonly Source CarbonFrameBearings = new("CARBON-FRAME-BEARINGS", SourceKind.Community, Confidence.Low, "Head bearings of two carbon road frames (forum, measured)", "CycleChat", "2013", "www.cyclechat.net/threads/specialized-head-bearings-are-doing-my-er-head-in.148295/");

    /// <summary>Head bearing of a race frame replaced (in Japanese).</summary>
    internal static readonly Source RadialHeadBearing = new("RADIAL-HEAD-BEARING", SourceKind.Community, Confidence.Low, "Head bearing of a race frame replaced (in Japanese)", "t595bb1.hatenablog.com", "n.d.", "t595bb1.hatenablog.com/entry/61822747");

    /// <summary>Fork crown race fitting.</summary>
    internal static readonly Source RaceFitting = new("RACE-FITTING", SourceKind.Community, Confidence.Low, "Fork crown race fitting", "Cycling UK forum", "6 Jan 2020", "forum.cyclinguk.org/viewtopic.php?f=5&t=134748&p=1431534");

    /// <summary>All forked up, part 1.</summary>
    internal static readonly Source SteererCutExample = new("STEERER-CUT-EXAMPLE", SourceKind.Community, Confidence.Medium, "All forked up, part 1", "myrambouilletbuild.blogspot.com", "Dec 2008", "myrambouilletbuild.blogspot.com/2008/12/all-forked-up-part-1.html");

    /// <summary>Cutting a steerer: why subtract 3 mm?.</summary>
    internal static readonly Source SteererGap = new("STEERER-GAP", SourceKind.Community, Confidence.Medium, "Cutting a steerer: why subtract 3 mm?", "RoadBikeReview archive", "19 Aug 2003", "archive.roadbikereview.com/00/0EFD6694.php");

    /// <summary>Technical FAQ: headset spacer stack height.</summary>
    internal static readonly Source SpacerColumn = new("SPACER-COLUMN", SourceKind.Press, Confidence.Medium, "Technical FAQ: headset spacer stack height", "VeloNews", "n.d.", "www.velonews.com/gear/technical-faq-headset-spacer-stack-height/");

    /// <summary>Headset spacer limit on carbon steerer.</summary>
    internal static readonly Source SpacerLimitThread = new("SPACER-LIMIT-THREAD", SourceKind.Community, Confidence.Low, "Headset spacer limit on carbon steerer", "RoadBikeReview", "c. 2005", "roadbikereview.com");

    /// <summary>Spacers under the stem (quotes a maker's representative).</summary>
    internal static readonly Source SpacerLimitQuoted = new("SPACER-LIMIT-QUOTED", SourceKind.Community, Confidence.Low, "Spacers under the stem (quotes a maker's representative)", "The Paceline Forum", "15 Jan 2012", "forums.thepaceline.net/archive/index.php/t-102524.html");

    /// <summary>Spacer arrangements and the safety of carbon steerers.</summary>
    internal static readonly Source SpacerArrangements = new("SPACER-ARRANGEMENTS", SourceKind.Community, Confidence.Low, "Spacer arrangements and the safety of carbon steerers", "Weight Weenies", "n.d.", "weightweenies.starbike.com/forum/viewtopic.php?f=3&t=143241");

    /// <summary>How many spacers safe above stem on carbon steerer.</summary>
    internal static readonly Source SpacersAbove = new("SPACERS-ABOVE", SourceKind.Community, Confidence.Low, "How many spacers safe above stem on carbon steerer", "BikeRadar forum", "May 2015", "forum.bikeradar.com/discussion/comment/19577433/");

    /// <summary>Classic Rendezvous list, message on bar diameters.</summary>
    internal static readonly Source LeverSeats = new("LEVER-SEATS", SourceKind.Community, Confidence.Medium, "Classic Rendezvous list, message on bar diameters", "S. Brown, classicrendezvous list", "Mar 2007", "smontanaro.net/CR/2007/3/78");

    /// <summary>Rigid fork vs 120 mm suspension fork.</summary>
    internal static readonly Source CorrectedFork = new("CORRECTED-FORK", SourceKind.MakerDocument, Confidence.Medium, "Rigid fork vs 120 mm suspension fork", "Carbon Cycles (fork maker)", "n.d.", "www.carboncycles.cc/");

    /// <summary>Forking confusion.</summary>
    internal static readonly Source ForkLengthBlog = new("FORK-LENGTH-BLOG", SourceKind.Community, Confidence.Medium, "Forking confusion", "g-tedproductions.blogspot.com", "18 Aug 2010", "g-tedproductions.blogspot.com/2010/08/forking-confusion.html");

    /// <summary>Suspension travel: understanding fork length.</summary>
    internal static readonly Source ForkTravel = new("FORK-TRAVEL", SourceKind.Press, Confidence.Medium, "Suspension travel: understanding fork length", "Bike Perfect", "n.d.", "www.bikeperfect.com/features/suspension-travel-understanding-fork-length-and-how-it-affects-your-mountain-bike");

    /// <summary>New metric shock sizes demystified.</summary>
    internal static readonly Source InchShockSizes = new("INCH-SHOCK-SIZES", SourceKind.Press, Confidence.Medium, "New metric shock sizes demystified", "Vital MTB", "Mar-Apr 2016", "www.vitalmtb.com/features/New-Metric-Shock-Sizes-Demystified-What-Does-It-Mean,1341");

    /// <summary>Ultimate guide: metric shock sizing.</summary>
    internal static readonly Source MetricShockSizes = new("METRIC-SHOCK-SIZES", SourceKind.Community, Confidence.Low, "Ultimate guide: metric shock sizing", "Worldwide Cyclery", "c. 2017", "www.worldwidecyclery.com/blogs/worldwide-cyclery-blog/ultimate-guide-metric-shock-sizing");

    /// <summary>How to measure the shock and hardware size on a MTB.</summary>
    internal static readonly Source ShockMeasuring = new("SHOCK-MEASURING", SourceKind.Community, Confidence.Medium, "How to measure the shock and hardware size on a MTB", "MTB Direct", "n.d.", "www.mtbdirect.com.au/blogs/maintenance-how-to/how-to-measure-the-shock-and-hardware-size-on-a-mountain-bike");

    /// <summary>Rear shock eyelet bushings.</summary>
    internal static readonly Source EyeletBushings = new("EYELET-BUSHINGS", SourceKind.Community, Confidence.Medium, "Rear shock eyelet bushings", "Bums on the Saddle", "16 Sep 2019", "blog.bumsonthesaddle.com/2019/09/16/rear-shock-eyelet-bushings/");

    /// <summary>To the point: rake and trail.</summary>
    internal static readonly Source RakeAndTrail = new("RAKE-AND-TRAIL", SourceKind.Press, Confidence.Medium, "To the point: rake and trail", "Pinkbike", "21 May 2013", "www.pinkbike.com/news/To-The-Point-Rake-and-Trail.html");

    /// <summary>Trunnion mounts and shock wear.</summary>
    internal static readonly Source TrunnionWear = new("TRUNNION-WEAR", SourceKind.Press, Confidence.Medium, "Trunnion mounts and shock wear", "Pinkbike", "Jan 2022", "www.pinkbike.com/news/pinkbike-poll-has-your-shock-ever-failed.html");

    /// <summary>SOC14: a closer look at the 2015 product line.</summary>
    internal static readonly Source ForkLengths2015 = new("FORK-LENGTHS-2015", SourceKind.Press, Confidence.Medium, "SOC14: a closer look at the 2015 product line", "BikeRumor", "2014", "bikerumor.com/soc14-a-closer-look-at-the-2015-fox-shox-product-line");

    /// <summary>Disc cross forks.</summary>
    internal static readonly Source CrossForks = new("CROSS-FORKS", SourceKind.Community, Confidence.Medium, "Disc cross forks", "Meriwether Cycles (frame builder)", "2014", "meriwethercycles.com/2014/01/02/disc-cross-forks/");

    /// <summary>Welche Einbauhoehe eignet sich an meinem Bike (in German).</summary>
    internal static readonly Source ForkLengthGuide = new("FORK-LENGTH-GUIDE", SourceKind.MakerDocument, Confidence.Medium, "Welche Einbauhoehe eignet sich an meinem Bike (in German)", "carbon-gabel.de (fork maker)", "2017", "carbon-gabel.de/2017/07/03/welche-einbauh%C3%B6he-eignet-sich-an-meinem-bike");

    /// <summary>The truth about BMX fork sizing.</summary>
    internal static readonly Source BmxForkSizing = new("BMX-FORK-SIZING", SourceKind.Community, Confidence.Medium, "The truth about BMX fork sizing", "brainybiker.com", "n.d.", "brainybiker.com/the-truth-about-bmx-fork-sizing/");

    /// <summary>BMX forks.</summary>
    internal static readonly Source BmxForkShop = new("BMX-FORK-SHOP", SourceKind.Community, Confidence.Medium, "BMX forks", "SkatePro (retailer)", "n.d.", "skatepro.com.au/371-39207.htm");

    /// <summary>Mountain fork now shipping.</summary>
    internal static readonly Source CrossForkLength = new("CROSS-FORK-LENGTH", SourceKind.Community, Confidence.Medium, "Mountain fork now shipping", "Bike Hugger", "n.d.", "bikehugger.com/posts/enve-mountain-fork-now-shipping/amp");

    /// <summary>Will a 29 fork fit a 27.5 bike.</summary>
    internal static readonly Source ForkPair = new("FORK-PAIR", SourceKind.Community, Confidence.Low, "Will a 29 fork fit a 27.5 bike", "brainybiker.com", "n.d.", "brainybiker.com/archives/11075");

    /// <summary>Notes on MTB frame geometry.</summary>
    internal static readonly Source ForkGeometryNotes = new("FORK-GEOMETRY-NOTES", SourceKind.Community, Confidence.Medium, "Notes on MTB frame geometry", "Meriwether Cycles (frame builder)", "2012", "meriwethercycles.com/2012/06/30/notes-on-mtb-frame-geometry/");

    /// <summary>Coil shock review (sizes available).</summary>
    internal static readonly Source ShockSizeList = new("SHOCK-SIZE-LIST", SourceKind.Press, Confidence.Medium, "Coil shock review (sizes available)", "Blister Review", "n.d.", "blisterreview.com/gear-reviews/ext-storia-lok-v3-shock");

    /// <summary>Inline coil shock review (sizes).</summary>
    internal static readonly Source InlineShockSizes = new("INLINE-SHOCK-SIZES", SourceKind.Press, Confidence.Medium, "Inline coil shock review (sizes)", "Pinkbike", "2023", "www.pinkbike.com/news/review-cane-creek-db-inline-coil-shock-2023.html?trk=rss");

    /// <summary>Rear shock product page, 2016 (travel options).</summary>
    internal static readonly Source ShockOptions = new("SHOCK-OPTIONS", SourceKind.Press, Confidence.Medium, "Rear shock product page, 2016 (travel options)", "Vital MTB", "2016", "www.vitalmtb.com/product/guide/Rear-Shocks,35/FOX/Float-X2-Factory-2-Position-Lever,17602");

    /// <summary>Shock details.</summary>
    internal static readonly Source ShockDetails = new("SHOCK-DETAILS", SourceKind.Press, Confidence.Medium, "Shock details", "Sicklines", "n.d.", "www.sicklines.com/tech/shock_details/");

    /// <summary>Air shock: the full story.</summary>
    internal static readonly Source ShockStory = new("SHOCK-STORY", SourceKind.Press, Confidence.Medium, "Air shock: the full story", "BikeRadar", "n.d.", "www.bikeradar.com/news/cane-creek-dbair-shock-the-full-story-video/");

    /// <summary>210 x 55 mm rear shock, product page.</summary>
    internal static readonly Source ShockProduct = new("SHOCK-PRODUCT", SourceKind.Community, Confidence.Medium, "210 x 55 mm rear shock, product page", "BikeCo", "2024", "bikeco.com/product/210-x-55mm-fox-factory-float-x2-w-2-position-switch/");

    /// <summary>Rear shock review.</summary>
    internal static readonly Source TrunnionShockReview = new("TRUNNION-SHOCK-REVIEW", SourceKind.Press, Confidence.Medium, "Rear shock review", "Mountain Biking UK (PressReader)", "2022", "www.pressreader.com/australia/mountain-biking-uk/20220413/282686165740931");

    /// <summary>Air shock review 2017.</summary>
    internal static readonly Source AirShockReview = new("AIR-SHOCK-REVIEW", SourceKind.Press, Confidence.Medium, "Air shock review 2017", "Pinkbike (copy)", "2017", "off.whip.live/bike/pinkbikecom-dvo-topaz-t3-air-shock-review-2017.html");

    /// <summary>A suspension maker heralds the era of metric-sized shocks.</summary>
    internal static readonly Source MetricShockLaunch = new("METRIC-SHOCK-LAUNCH", SourceKind.Press, Confidence.Medium, "A suspension maker heralds the era of metric-sized shocks", "BikeRadar", "2016", "bikeradar.com/mtb/news/article/rockshox-deluxe-heralds-the-era-of-metric-sized-shocks-46778");

    /// <summary>First metric shocks launched.</summary>
    internal static readonly Source MetricShockNews = new("METRIC-SHOCK-NEWS", SourceKind.Press, Confidence.Medium, "First metric shocks launched", "MBR", "2016", "mbr.co.uk/videos/news/rockshox-launches-forst-metric-shock-deluxe");

    /// <summary>Interchangeability of splined-rotor lockrings.</summary>
    internal static readonly Source LockringExchange = new("LOCKRING-EXCHANGE", SourceKind.Community, Confidence.Low, "Interchangeability of splined-rotor lockrings", "brainybiker.com", "undated", "brainybiker.com/analyzing-the-interchangeability-of-centerlock-lockrings/");

    /// <summary>Technical FAQ on rotors.</summary>
    internal static readonly Source RotorFaq = new("ROTOR-FAQ", SourceKind.Press, Confidence.Medium, "Technical FAQ on rotors", "VeloNews", "2011", "velonews.com/2011/10/mtb/tech-faq-lennard-zinn-on-rotors-and-drilling-frame-drain-holes_252053");

    /// <summary>Rear disc below 1.5mm minimum.</summary>
    internal static readonly Source WornRotors = new("WORN-ROTORS", SourceKind.Community, Confidence.Low, "Rear disc below 1.5mm minimum", "EMTB Forums", "2024", "emtbforums.com/threads/rear-disc-below-1-5mm-minimum.39079");

    /// <summary>Braze-on distances index (frame builders' list posts).</summary>
    internal static readonly Source BrazeOnDistances = new("BRAZE-ON-DISTANCES", SourceKind.Community, Confidence.Medium, "Braze-on distances index (frame builders' list posts)", "bikebuilding.blogspot.com", "2006", "bikebuilding.blogspot.com/2006/12/braze-on-distances-index.html");

    /// <summary>Clearing up FM140.</summary>
    internal static readonly Source FlatMountClearing = new("FLAT-MOUNT-CLEARING", SourceKind.Community, Confidence.Low, "Clearing up FM140", "peterverdone.com", "undated", "peterverdone.com/clearing-up-fm140/");

    /// <summary>Brake Reach Pitfalls.</summary>
    internal static readonly Source ReachPitfalls = new("REACH-PITFALLS", SourceKind.Community, Confidence.Medium, "Brake Reach Pitfalls", "cycledepot", "2012", "cycledepot.blogspot.com/2012/10/brake-reach-pitfalls.html");

    /// <summary>How to measure brake calipers (QandA copy).</summary>
    internal static readonly Source ReachMeasuring = new("REACH-MEASURING", SourceKind.Community, Confidence.Medium, "How to measure brake calipers (Q&A copy)", "Bicycles Stack Exchange copy", "undated", "bicycles.stackexchange.com/questions/44041");

    /// <summary>Post on brake reach classes.</summary>
    internal static readonly Source ReachClasses = new("REACH-CLASSES", SourceKind.Community, Confidence.Medium, "Post on brake reach classes", "Classic Rendezvous list archive", "2006", "smontanaro.net/CR/2006/5/1322");

    /// <summary>Caliper reach.</summary>
    internal static readonly Source ReachShop = new("REACH-SHOP", SourceKind.Community, Confidence.Medium, "Caliper reach", "bmxworks", "undated", "bmxworks.com.au/how-to-calipers-reach/");

    /// <summary>Brakes.</summary>
    internal static readonly Source BrakesBlog = new("BRAKES-BLOG", SourceKind.Community, Confidence.Medium, "Brakes", "bikeheights.blogspot.com", "2010", "bikeheights.blogspot.com/2010/08/brakes.html");

    /// <summary>Brake Lever Compatibility.</summary>
    internal static readonly Source LeverPull = new("LEVER-PULL", SourceKind.Press, Confidence.Medium, "Brake Lever Compatibility", "Urban Velo issue 21", "2010", "urbanvelo.org/issue21/p86-87.html");

    /// <summary>Cable pull of levers and cable that brakes want, by class, in millimetres.</summary>
    internal static readonly Source MechanicalBrakes = new("MECHANICAL-BRAKES", SourceKind.Handbook, Confidence.Medium, "Compatibility [08] Mechanical brakes", "BikeGremlin", "16 Nov 2018", "bike.bikegremlin.com/1402/mechanical-bicycle-brake-compatibility/");

    /// <summary>Adjusting Direct-pull Cantilever Bicycle Brakes.</summary>
    internal static readonly Source DirectPullArticle = new("DIRECT-PULL-ARTICLE", SourceKind.Handbook, Confidence.Medium, "Adjusting Direct-pull Cantilever Bicycle Brakes", "sheldonbrown.com", "undated", "sheldonbrown.com/canti-direct.html");

    /// <summary>About Bicycle Brakes with Brazed-on Fittings.</summary>
    internal static readonly Source BrazedOnBrakes = new("BRAZED-ON-BRAKES", SourceKind.Handbook, Confidence.Medium, "About Bicycle Brakes with Brazed-on Fittings", "sheldonbrown.com", "undated", "sheldonbrown.com/cantilever-adjustment.html");

    /// <summary>MTB brake fluid, DOT vs mineral oil.</summary>
    internal static readonly Source FluidGuide = new("FLUID-GUIDE", SourceKind.Community, Confidence.Medium, "MTB brake fluid, DOT vs mineral oil", "vtt-xc-blog.com", "2026", "vtt-xc-blog.com/mtb-brake-fluid-dot-vs-mineral-oil-compatibility-guide");

    /// <summary>Minimum seatpost insertion length.</summary>
    internal static readonly Source InsertionArticle = new("INSERTION-ARTICLE", SourceKind.Handbook, Confidence.Medium, "Minimum seatpost insertion length", "BikeGremlin", "28 Dec 2017", "bike.bikegremlin.com/3144/minimum-seatpost-insertion-length");

    /// <summary>Moving the seat post.</summary>
    internal static readonly Source SlipFitColumn = new("SLIP-FIT-COLUMN", SourceKind.Handbook, Confidence.Medium, "Moving the seat post", "Minnesota MTB (mechanic's column)", "n.d.", "minnesotamtb.org/10480");

    /// <summary>Choosing a dropper: ride height and insertion.</summary>
    internal static readonly Source DropperChoice = new("DROPPER-CHOICE", SourceKind.Community, Confidence.Medium, "Choosing a dropper: ride height and insertion", "dirtlifebike.com", "n.d.", "dirtlifebike.com/choosing-mtb-dropper-seatpost");

    /// <summary>The 240 mm dropper post.</summary>
    internal static readonly Source LongDropper = new("LONG-DROPPER", SourceKind.Community, Confidence.Medium, "The 240 mm dropper post", "peterverdone.com", "n.d.", "peterverdone.com/the-240mm-dropper-post");

    /// <summary>Seatpost swap abandoned (in Japanese).</summary>
    internal static readonly Source OddPostMeasured = new("ODD-POST-MEASURED", SourceKind.Community, Confidence.Low, "Seatpost swap abandoned (in Japanese)", "ameblo 0301hard", "n.d.", "ameblo.jp/0301hard/entry-12090727351.html");

    /// <summary>Bicycle and motorcycle geometry.</summary>
    internal static readonly Source GeometryArticle = new("GEOMETRY-ARTICLE", SourceKind.Handbook, Confidence.Medium, "Bicycle and motorcycle geometry", "Wikipedia", "undated", "en.wikipedia.org/wiki/Bicycle_and_motorcycle_geometry");

    /// <summary>What is wheel flop? (in Japanese).</summary>
    internal static readonly Source FlopExplained = new("FLOP-EXPLAINED", SourceKind.Community, Confidence.Medium, "What is wheel flop? (in Japanese)", "kuromori.home.blog", "undated", "kuromori.home.blog/what-is-wheel-flop/");

    /// <summary>16 CFR 1512.17 Other requirements (ground and toe clearance).</summary>
    internal static readonly Source ClearanceRegulation = new("CLEARANCE-REGULATION", SourceKind.Standard, Confidence.High, "16 CFR 1512.17 Other requirements (ground and toe clearance)", "US Code of Federal Regulations", "undated", "law.cornell.edu/cfr/text/16/1512.17");

    /// <summary>Inspection: save time.</summary>
    internal static readonly Source ReuseInspection = new("REUSE-INSPECTION", SourceKind.Community, Confidence.Medium, "Inspection: save time", "sidewallthorn.blogspot.com", "29 Sep 2015", "sidewallthorn.blogspot.com/2015/09/");

    /// <summary>Tips for buying used road bikes, part 2: how to inspect a used bike.</summary>
    internal static readonly Source UsedBicycle = new("USED-BICYCLE", SourceKind.Press, Confidence.Medium, "Tips for buying used road bikes, part 2: how to inspect a used bike before you buy", "roadbikerider.com", "undated", "www.roadbikerider.com/tips-for-buying-used-road-bikes-part-2-how-to-inspect-a-used-bike-before-you-buy/");

    /// <summary>Operation manual, carbon fiber composite.</summary>
    internal static readonly Source CarbonCrashManual = new("CARBON-CRASH-MANUAL", SourceKind.MakerDocument, Confidence.Low, "Operation Manual, chapter 1: Guide to Safe On-and-Off Road Operation (carbon fiber composite)", "Gary Fisher", "undated", "38.142.81.21:8001/manual/gary-fisher/bicycle/operation-manual-english/page-10.html");

    /// <summary>Inspection and crash damage of carbon frames and forks.</summary>
    internal static readonly Source CarbonFrameManual = new("CARBON-FRAME-MANUAL", SourceKind.MakerDocument, Confidence.Medium, "Inspection & Crash Damage Of Carbon Frames/Forks (owner's manual supplement)", "Cannondale", "2012-2016", "manuzoid.com/manuals/RPE11-Cannondale%20Scalpel%2029%202012-2016%20Owner's%20Manual");

    /// <summary>Is this advice still relevant? (quotes a catalogue of 2013).</summary>
    internal static readonly Source AlloyBarsAfterFall = new("ALLOY-BARS-AFTER-FALL", SourceKind.Community, Confidence.Low, "Is this advice still relevant? (quotes a parts catalogue of 2013)", "thorncyclesforum.co.uk", "2019", "thorncyclesforum.co.uk/index.php?topic=13633.0");

    /// <summary>Replacement for safety reasons.</summary>
    internal static readonly Source AlloyPartsLife = new("ALLOY-PARTS-LIFE", SourceKind.Press, Confidence.Medium, "Replacement for safety reasons", "zedler.de", "undated", "www.zedler.de/en/news/publikationen/tour/news-detail/replacement-for-safety-reasons/");

    /// <summary>Rim wear.</summary>
    internal static readonly Source RimWall = new("RIM-WALL", SourceKind.Community, Confidence.Medium, "Rim wear", "wheellab.cc", "undated", "wheellab.cc/rim-wear/");

    /// <summary>How do I check for rim wear?</summary>
    internal static readonly Source RimWallBreaks = new("RIM-WALL-BREAKS", SourceKind.Community, Confidence.Low, "How Do I Check For Rim Wear", "cyclechat.net", "undated", "www.cyclechat.net/threads/how-do-i-check-for-rim-wear.91460/");

    /// <summary>What to look for when buying a used road bike.</summary>
    internal static readonly Source ChainWithSprockets = new("CHAIN-WITH-SPROCKETS", SourceKind.MakerDocument, Confidence.Low, "What to look for when buying a used road bike", "daccordicycles.com", "undated", "daccordicycles.com/what-to-look-for-when-buying-a-used-road-bike");

    /// <summary>Zen and the art of fixie building: chainline tricks, part II.</summary>
    internal static readonly Source OneSprocketLine = new("ONE-SPROCKET-LINE", SourceKind.Community, Confidence.Medium, "Zen and the art of fixie building: chainline tricks part II", "West 5 Cycles", "2008", "west5cycles.com/2008/08/19/zen-and-the-art-of-fixie-building-chainline-tricks-part-ii/");

    /// <summary>Bike front brake: left or right?</summary>
    internal static readonly Source BrakeHands = new("BRAKE-HANDS", SourceKind.Community, Confidence.Low, "Bike front brake: left or right?", "frederiksfridayfact.com", "20 Jan 2017", "frederiksfridayfact.com/fact.php?date=2017-01-20");

    /// <summary>Should the bicycle brakes be left rear and right front.</summary>
    internal static readonly Source BrakeHandsByCountry = new("BRAKE-HANDS-BY-COUNTRY", SourceKind.Community, Confidence.Low, "Should the bicycle brakes be left rear and right front", "huafengqp.com", "undated", "www.huafengqp.com/news/Should-the-bicycle-brakes-be-left-rear-and-right.shtml");

    /// <summary>Downtube clearance (in Japanese).</summary>
    internal static readonly Source DownTubeClearance = new("DOWN-TUBE-CLEARANCE", SourceKind.Handbook, Confidence.Medium, "Downtube clearance (in Japanese)", "jitetan.com bicycle glossary", "n.d.", "jitetan.com/term/shitakan_sukima.html");

    /// <summary>Test of toe clearance, JIS D 9301:2019 (in Japanese).</summary>
    internal static readonly Source ToeClearanceTest = new("TOE-CLEARANCE-TEST", SourceKind.Standard, Confidence.Medium, "Test of toe clearance, JIS D 9301:2019 (in Japanese)", "Japan Bicycle Promotion Institute", "2019", "jbpi giken_post/exam/bicycle/drive/4582");

    /// <summary>Help Needed With Stem Math.</summary>
    internal static readonly Source StemMath = new("STEM-MATH", SourceKind.Community, Confidence.Medium, "Help Needed With Stem Math", "BikeForums", "2005", "bikeforums.net/bicycle-mechanics/89430-help-needed-stem-math.html");

    /// <summary>Stem angle explained (in Japanese).</summary>
    internal static readonly Source StemAngles = new("STEM-ANGLES", SourceKind.Community, Confidence.Medium, "Stem angle explained (in Japanese)", "World Cycle blog", "undated", "blog.worldcycle.co.jp/?p=34177");

    /// <summary>Star Fangled Nut and Expansion Plug Installation.</summary>
    internal static readonly Source StarNutSetting = new("STAR-NUT-SETTING", SourceKind.MakerDocument, Confidence.Medium, "Star Fangled Nut and Expansion Plug Installation", "Park Tool", "undated", "parktool.com/en-int/blog/repair-help/star-fangled-nut-and-expansion-plug-installation");

    /// <summary>Avoid dropper post installation mayhem.</summary>
    internal static readonly Source DropperTips = new("DROPPER-TIPS", SourceKind.Press, Confidence.Medium, "Avoid dropper post installation mayhem", "Bicycle Times", "undated", "bicycletimesmag.com/tag/dropper-post/");

    /// <summary>Saddle adjustment (in Japanese).</summary>
    internal static readonly Source SaddleAdjustment = new("SADDLE-ADJUSTMENT", SourceKind.Community, Confidence.Low, "Saddle adjustment (in Japanese)", "road-bike.click", "undated", "road-bike.click/setting/saddle/saddle-adjustment/");

    /// <summary>How to measure inseam (in Japanese).</summary>
    internal static readonly Source InseamMeasuring = new("INSEAM-MEASURING", SourceKind.Community, Confidence.Low, "How to measure inseam (in Japanese)", "Hakusen Hatogaya (shop blog)", "Apr 2017", "hakusen-hatogaya.lekumo.biz/blog/2017/04/post-2671.html");

    /// <summary>A sizing chart (blog post that names the 0.883 formula).</summary>
    internal static readonly Source SizingChartPost = new("SIZING-CHART-POST", SourceKind.Community, Confidence.Low, "A sizing chart (blog post that names the 0.883 formula)", "myworldfromabicycle.blogspot.com", "May 2010", "myworldfromabicycle.blogspot.com");

    /// <summary>Saddle height factors of a team's riders (in Japanese).</summary>
    internal static readonly Source SaddleRegression = new("SADDLE-REGRESSION", SourceKind.Community, Confidence.Low, "Saddle height factors of a team's riders (in Japanese)", "ameblo bo-zu-88", "undated", "ameblo.jp/bo-zu-88/entry-12179691768.html");

    /// <summary>Bicycle Crank Length: A Formula.</summary>
    internal static readonly Source CrankFormula = new("CRANK-FORMULA", SourceKind.Community, Confidence.Low, "Bicycle Crank Length: A Formula", "nettally.com", "undated", "nettally.com/palmk/crankset.html");

    /// <summary>Bicycle Crank Length: Read This Before Flaming Me.</summary>
    internal static readonly Source CrankFormulaRange = new("CRANK-FORMULA-RANGE", SourceKind.Community, Confidence.Low, "Bicycle Crank Length: Read This Before Flaming Me", "polaris.net", "undated", "polaris.net/palmk/crread.html");

    /// <summary>Post on crank lengths, rec.bicycles.tech.</summary>
    internal static readonly Source CrankLengthPost = new("CRANK-LENGTH-POST", SourceKind.Community, Confidence.Low, "Post on crank lengths, rec.bicycles.tech", "newsgroup archive", "22 Aug 1993", "discmaster.textfiles.com/view/10781/CDASC08.ISO/VRAC/BIKE0085.ZIP/BIKE0085.TXT");

    /// <summary>Rims for tyres that have to carry much (in German).</summary>
    internal static readonly Source LoadedRims = new("LOADED-RIMS", SourceKind.Press, Confidence.Medium, "Felgen fuer Reifen, die viel tragen muessen (in German)", "Fahrradzukunft 2/2006", "2006", "www.fahrradzukunft.de/2/felgen");

    /// <summary>A frame workshop's page on splitting frames for belts; read in part.</summary>
    internal static readonly Source BeltConversion = new("BELT-CONVERSION", SourceKind.Community, Confidence.Medium, "Gates belt conversion", "massivebikes.com", "undated", "massivebikes.com/en/74-gates-belt-conversion");

    /// <summary>Where frames open for belts; a blog.</summary>
    internal static readonly Source SplitFrames = new("SPLIT-FRAMES", SourceKind.Community, Confidence.Medium, "DIY Split Frame for Belt Drive", "greenbirdbikeblog.blogspot.com", "31 Mar 2016", "greenbirdbikeblog.blogspot.com/2016/03/diy-split-frame-for-belt-drive.html");

    /// <summary>Flanged sprockets against a track in the middle.</summary>
    internal static readonly Source BeltTracks = new("BELT-TRACKS", SourceKind.Press, Confidence.Medium, "Spot Brand Announces Gates Center Track Bikes Available Now", "Twenty Nine Inches", "2011", "twentynineinches.com/spot-brand-announces-gates-center-track-bikes-available-now");

    /// <summary>Pitch and width of a flanged belt, from a shop's product page.</summary>
    internal static readonly Source FlangedBelt = new("FLANGED-BELT", SourceKind.Community, Confidence.Medium, "111 Tooth CDC Belt Black (product page)", "bikeknack.com.au", "undated", "bikeknack.com.au/product/111-tooth-cdc-belt-black");

    /// <summary>Coaster brakes; the opening of the page was read.</summary>
    internal static readonly Source CoasterBrakes = new("COASTER-BRAKES", SourceKind.Handbook, Confidence.Medium, "Bicycle Coaster Brakes", "sheldonbrown.com", "undated", "sheldonbrown.com/coaster-brakes.html");

    /// <summary>The arm of a front drum brake and its clip at the fork; a forum.</summary>
    internal static readonly Source DrumArmClip = new("DRUM-ARM-CLIP", SourceKind.Community, Confidence.Medium, "SA front drum brake conversion", "Cycling UK forum", "undated", "forum.cyclinguk.org/viewtopic.php?p=1430673");

    /// <summary>What happens when that arm comes loose; a forum.</summary>
    internal static readonly Source DrumArmLoose = new("DRUM-ARM-LOOSE", SourceKind.Community, Confidence.Medium, "Securing SA brake arm to prevent failure (hospitalization)", "motorbicycling.com forum", "undated", "motorbicycling.com/threads/securing-sa-brake-arm-to-prevent-failure-hospitalization.46377");

    /// <summary>Hub dynamos; a copy of the article was read.</summary>
    internal static readonly Source HubDynamos = new("HUB-DYNAMOS", SourceKind.Handbook, Confidence.Medium, "Hub dynamo", "Wikipedia", "undated", "en.wikipedia.org/wiki/Hub_dynamo");

    /// <summary>Plugs and wires of hub dynamos.</summary>
    internal static readonly Source DynamoConnectors = new("DYNAMO-CONNECTORS", SourceKind.Community, Confidence.Medium, "How To Set Up The Best Hub Dynamo System For USB Charging & Lights", "cyclingabout.com", "undated", "cyclingabout.com/best-hub-dynamo-system");

    /// <summary>A plug in two halves on a dynamo hub; a blog.</summary>
    internal static readonly Source DynamoPlug = new("DYNAMO-PLUG", SourceKind.Community, Confidence.Medium, "archive page, October 2007", "3speedblog.blogspot.com", "Oct 2007", "3speedblog.blogspot.com/2007/10");

    /// <summary>Wires of electronic shifting in an older frame; a forum.</summary>
    internal static readonly Source WiredShift = new("WIRED-SHIFT", SourceKind.Community, Confidence.Medium, "Di2 11 speed on rim brake steel frame", "The Paceline forum", "undated", "forums.thepaceline.net/showthread.php?t=311396");

    /// <summary>Wired and wireless shifting against cables; a blog.</summary>
    internal static readonly Source WirelessShift = new("WIRELESS-SHIFT", SourceKind.Community, Confidence.Medium, "Frayed again", "accidentalrandonneur.wordpress.com", "16 Jun 2017", "accidentalrandonneur.wordpress.com/2017/06/16/frayed-again");

    /// <summary>A patent on hydraulic shifting, which describes cables too; its opening was read.</summary>
    internal static readonly Source HydraulicShift = new("HYDRAULIC-SHIFT", SourceKind.MakerDocument, Confidence.Medium, "EP 1264764 A2, hydraulically operated bicycle gear shift mechanism", "European Patent Office", "undated", "data.epo.org/publication-server/rest/v1.2/patents/EP1264764NWA2/document.html");

    /// <summary>Gear inches.</summary>
    internal static readonly Source GearInchesPage = new("GEAR-INCHES", SourceKind.Handbook, Confidence.Medium, "Gear inches", "Wikipedia (mirror text)", "undated", "en.wikipedia.org/wiki/Gear_inches");

    /// <summary>Mechanical Advantage: Gain Ratios.</summary>
    internal static readonly Source GainRatios = new("GAIN-RATIOS", SourceKind.Handbook, Confidence.Medium, "Mechanical Advantage: Gain Ratios", "Adventure Cycling Association (reprint)", "undated", "studylib.net/doc/7948093/gain-ratios---adventure-cycling-association");

    /// <summary>Drive ratios of bicycle hub gears (workbook, improper fractions).</summary>
    internal static readonly Source HubGearFractions = new("HUB-GEAR-FRACTIONS", SourceKind.Handbook, Confidence.Medium, "Drive ratios of bicycle hub gears (workbook, improper fractions)", "john-s-allen.com", "2016", "john-s-allen.com/gears/hubratios_files/sheet006.htm");

    /// <summary>Internal gear ratios.</summary>
    internal static readonly Source HubGearArticle = new("HUB-GEAR-ARTICLE", SourceKind.Handbook, Confidence.Medium, "Internal gear ratios", "Cycling UK cyclists' library", "undated", "cyclinguk.org/cyclists-library/components/transmission-gears/internal-gear/internal-gear-ratios");

    /// <summary>Gear Restrictions for Youth and Junior riders.</summary>
    internal static readonly Source YouthLimits = new("YOUTH-LIMITS", SourceKind.Community, Confidence.Medium, "Gear Restrictions for Youth and Junior riders", "Matlock CC", "undated", "matlockcyclingclub.org.uk/youth-gear-restrictions");

    /// <summary>Changes in gear restrictions for youth riders.</summary>
    internal static readonly Source YouthLimitsChanged = new("YOUTH-LIMITS-CHANGED", SourceKind.Community, Confidence.Medium, "Changes in gear restrictions for youth riders", "sportsweek.org (club news)", "2025", "sportsweek.org/en/cycling/news/397353663");

    /// <summary>Machine Design, U. C. Jindal, example 30-1 (as worked in a textbook companion).</summary>
    internal static readonly Source RollerChainTextbook = new("ROLLER-CHAIN-TEXTBOOK", SourceKind.Handbook, Confidence.Medium, "Machine Design, U. C. Jindal, example 30-1 (as worked in a textbook companion)", "OJB-Quantum/Python-Textbook-Companions", "undated", "github.com/OJB-Quantum/Python-Textbook-Companions");

    /// <summary>Chain length page (formula).</summary>
    internal static readonly Source RollerChainPage = new("ROLLER-CHAIN-PAGE", SourceKind.MakerDocument, Confidence.Medium, "Chain length page (formula)", "Ramsey Chain", "undated", "ramseychain.com");

    /// <summary>calculating chain length (thread 86388).</summary>
    internal static readonly Source ChainLengthThread = new("CHAIN-LENGTH-THREAD", SourceKind.Community, Confidence.Low, "calculating chain length (thread 86388)", "Bike Forums", "2005", "bikeforums.net/showthread.php?86388");

    /// <summary>Chain Sizing 1x11 (thread, quoting a handbook).</summary>
    internal static readonly Source ChainSizing = new("CHAIN-SIZING", SourceKind.Community, Confidence.Medium, "Chain Sizing 1x11 (thread, quoting a handbook)", "Bike Forums", "2016", "bikeforums.net/bicycle-mechanics/1050398-chain-sizing-1x11-print.html");

    /// <summary>When to replace a bike chain (quotes tool and component makers).</summary>
    internal static readonly Source ChainWearLimits = new("CHAIN-WEAR-LIMITS", SourceKind.Community, Confidence.Medium, "When to replace a bike chain (quotes tool and component makers)", "waxtrack.app", "undated", "waxtrack.app/learn/when-to-replace-a-chain");

    /// <summary>When to replace your bicycle chain.</summary>
    internal static readonly Source ChainWearShop = new("CHAIN-WEAR-SHOP", SourceKind.Community, Confidence.Medium, "When to replace your bicycle chain", "Wheely Convenient", "undated", "wheelyconvenient.com/blogs/news/when-to-replace-your-bicycle-chain-1");

    /// <summary>Measuring chain wear.</summary>
    internal static readonly Source ChainWearRuler = new("CHAIN-WEAR-RULER", SourceKind.Community, Confidence.Medium, "Measuring chain wear", "pushbikes.org.uk", "undated", "pushbikes.org.uk/file/measuring-chain-wear");

    /// <summary>Total capacity glossary entry.</summary>
    internal static readonly Source TotalCapacity = new("TOTAL-CAPACITY", SourceKind.Handbook, Confidence.Medium, "Total capacity glossary entry", "jitetan.com", "undated", "jitetan.com/term/total_capacity.html");

    /// <summary>Chainline measuring, mechanical advice (as quoted).</summary>
    internal static readonly Source ChainlineMeasuring = new("CHAINLINE-MEASURING", SourceKind.MakerDocument, Confidence.Medium, "Chainline measuring, mechanical advice (as quoted)", "Hozan", "undated", "hozan.co.jp/mechanic/mechanical_advice/");

    /// <summary>Chainline, part 6: worked cases.</summary>
    internal static readonly Source ChainAngle = new("CHAIN-ANGLE", SourceKind.Community, Confidence.Medium, "Chainline, part 6: worked cases", "dt6110", "undated", "dt6110.web.fc2.com/parts/chainline06.html");

    /// <summary>spoke_length.txt.</summary>
    internal static readonly Source SpokeFormula = new("SPOKE-FORMULA", SourceKind.Community, Confidence.Medium, "spoke_length.txt", "tristable.net", "undated", "tristable.net/bike/spoke_length.txt");

    /// <summary>Triplet lacing and spoke length (formula and corrections).</summary>
    internal static readonly Source SpokeCorrections = new("SPOKE-CORRECTIONS", SourceKind.Community, Confidence.Low, "Triplet lacing and spoke length (formula and corrections)", "lfgss.com", "2018", "lfgss.com/comments/14156621");

    /// <summary>Building a wheel.</summary>
    internal static readonly Source FlangeOffsetSum = new("FLANGE-OFFSET-SUM", SourceKind.Community, Confidence.Low, "Building a wheel", "philipmolloy.com", "2014", "philipmolloy.com/wheel.html");

    /// <summary>Rim technology glossary.</summary>
    internal static readonly Source RimGlossary = new("RIM-GLOSSARY", SourceKind.MakerDocument, Confidence.Medium, "Rim technology glossary", "Stars Circle", "undated", "stars-rim.com/technologyen.aspx?id=368");

    /// <summary>How do you determine that difference in tension?.</summary>
    internal static readonly Source SpokeTensions = new("SPOKE-TENSIONS", SourceKind.Community, Confidence.Low, "How do you determine that difference in tension?", "r/wheelbuild (mirror)", "2023", "rl.thedroth.rocks/r/wheelbuild/comments/120dpa3/");

    /// <summary>Cyclecomputer calibration, radius table.</summary>
    internal static readonly Source CalibrationPage = new("CALIBRATION-PAGE", SourceKind.Handbook, Confidence.Medium, "Cyclecomputer calibration, radius table", "sheldonbrown.com", "undated", "sheldonbrown.com/cyclecomp_d.html");

    /// <summary>Tire size chart (PDF, read through a transcription).</summary>
    internal static readonly Source RolloutChart = new("ROLLOUT-CHART", SourceKind.MakerDocument, Confidence.Medium, "Tire size chart (PDF, read through a transcription)", "CatEye", "2015", "cateye.com/data/resources/Tire_size_chart_ENG_151106.pdf");

    /// <summary>Wheel size list in a Bluetooth cycling-sensor profile.</summary>
    internal static readonly Source RolloutSizes = new("ROLLOUT-SIZES", SourceKind.Community, Confidence.Medium, "Wheel size list in a Bluetooth cycling-sensor profile", "Nordic Semiconductor, Kotlin BLE library", "2023", "no.nordicsemi.android.kotlin.ble.profile.csc.data");

    /// <summary>Cycle computer leaflet copied in a forum post, with a reader's test under load.</summary>
    internal static readonly Source LoadedRollout = new("LOADED-ROLLOUT", SourceKind.Community, Confidence.Low, "Cycle computer leaflet copied in a forum post, with a reader's test under load", "forum.centos-webpanel.com", "undated", "forum.centos-webpanel.com/index.php?topic=1746.msg5725");

    /// <summary>How to measure bike rim width.</summary>
    internal static readonly Source RimWidthMeasuring = new("RIM-WIDTH-MEASURING", SourceKind.Community, Confidence.Low, "How to measure bike rim width", "cyclingrevolution.com", "undated", "cyclingrevolution.com/how-to-measure-bike-rim-width/");

    /// <summary>Tyre width on a wider rim.</summary>
    internal static readonly Source WidthOnWiderRim = new("WIDTH-ON-WIDER-RIM", SourceKind.Community, Confidence.Low, "Tyre width on a wider rim", "lfgss.com", "2019", "lfgss.com/comments/14481850");

    /// <summary>What is the correct inflation pressure for my tire?.</summary>
    internal static readonly Source PressureByWeight = new("PRESSURE-BY-WEIGHT", SourceKind.MakerDocument, Confidence.Medium, "What is the correct inflation pressure for my tire?", "Schwalbe", "undated", "schwalbe.com/en/faq-detailseite/what-is-the-correct-inflation-pressure-for-my-tire.html");

    /// <summary>TBIS 4210-1:2018 (text of ISO 4210-1), clause 2.27.</summary>
    internal static readonly Source LowerMarking = new("LOWER-MARKING", SourceKind.Standard, Confidence.Medium, "TBIS 4210-1:2018 (text of ISO 4210-1), clause 2.27", "Taiwan Bicycle Industry Standards", "2018", "chctest.tbnet.org.tw/eBOOK-TBIS/01/EN/files/basic-html/page11.html");

    /// <summary>Tire size and pressure (PDF).</summary>
    internal static readonly Source PressureAndWidth = new("PRESSURE-AND-WIDTH", SourceKind.MakerDocument, Confidence.Medium, "Tire size and pressure (PDF)", "a wheel maker (Rolf Prima)", "2022", "cdn.shopify.com/s/files/1/1057/5180/files/Tire_size_and_pressure_RP09292022.pdf");

    /// <summary>Interchangeability of 200mm and 203mm rotors.</summary>
    internal static readonly Source RotorInterchange = new("ROTOR-INTERCHANGE", SourceKind.Community, Confidence.Low, "Interchangeability of 200mm and 203mm rotors", "BrainyBiker", "undated", "brainybiker.com/analyzing-the-interchangeability-of-200mm-and-203mm-rotors/");

    /// <summary>Garage Files: How to Calculate Leverage Ratios.</summary>
    internal static readonly Source LeverageColumn = new("LEVERAGE-COLUMN", SourceKind.Press, Confidence.Medium, "Garage Files: How to Calculate Leverage Ratios", "Mountain Bike Action", "undated", "mbaction.com/garage-files-leverage-ratio/");

    /// <summary>Rear sag by kind of riding (title not kept).</summary>
    internal static readonly Source SagByRiding = new("SAG-BY-RIDING", SourceKind.Community, Confidence.Low, "Rear sag by kind of riding (title not kept)", "fanatikbike.com", "undated", "fanatikbike.com");

    /// <summary>Sag in general (title not kept).</summary>
    internal static readonly Source SagInGeneral = new("SAG-IN-GENERAL", SourceKind.Press, Confidence.Low, "Sag in general (title not kept)", "mtbiking.com.au", "undated", "mtbiking.com.au");

    /// <summary>Sag of a downhill fork (title not kept).</summary>
    internal static readonly Source DownhillForkSag = new("DOWNHILL-FORK-SAG", SourceKind.Press, Confidence.Low, "Sag of a downhill fork (title not kept)", "BikeRadar", "undated", "bikeradar.com");

    /// <summary>Precautions for the use of brake pads for rim brake road bike carbon wheels.</summary>
    internal static readonly Source CarbonRimPads = new("CARBON-RIM-PADS", SourceKind.MakerDocument, Confidence.Medium, "Precautions for the use of brake pads for rim brake road bike carbon wheels", "Carbonal", "undated", "carbonal.net/en-de/blogs/news/precautions-for-the-use-of-brake-pads-for-rim-brake-road-bicycle-carbon-wheels");

    /// <summary>Splined rotor adapter notes.</summary>
    internal static readonly Source SplinedRotorNotes = new("SPLINED-ROTOR-NOTES", SourceKind.Community, Confidence.Medium, "Splined rotor adapter notes", "nomulabworkshop.com", "undated", "nomulabworkshop.com/posts/3830.html");

    /// <summary>Disc brake mount glossary entry.</summary>
    internal static readonly Source OpenEndsGlossary = new("OPEN-ENDS-GLOSSARY", SourceKind.Handbook, Confidence.Medium, "Disc brake mount glossary entry", "jitetan.com", "undated", "jitetan.com/term/disc_brake_za.html");

    /// <summary>Anti-rotation washers in non-parallel dropouts.</summary>
    internal static readonly Source NonTurnWashers = new("NON-TURN-WASHERS", SourceKind.Community, Confidence.Low, "Anti-rotation washers (non-turn washers) in non-parallel dropouts", "Bicycles Stack Exchange", "2018", "bicycles.stackexchange.com/questions/58138");

    /// <summary>Notes on flat-mount caliper mounting bolts.</summary>
    internal static readonly Source FlatMountBolts = new("FLAT-MOUNT-BOLTS", SourceKind.Community, Confidence.Medium, "Notes on flat-mount caliper mounting bolts (in translation)", "nomulabworkshop.com", "undated", "nomulabworkshop.com/posts/5063.html");

    /// <summary>Brake calipers and mudguards: bolts for a thin stay.</summary>
    internal static readonly Source FlatMountThinStay = new("FLAT-MOUNT-THIN-STAY", SourceKind.Community, Confidence.Medium, "Fabike C3: Brake Calipers and SKS Mudguards", "handsonbike.blogspot.com", "2018", "handsonbike.blogspot.com/2018/10/fabike-c3-brake-calipers-and-sks.html");

    /// <summary>Cantilever post spacing question.</summary>
    internal static readonly Source CantileverSpacing = new("CANTILEVER-SPACING", SourceKind.Community, Confidence.Low, "Cantilever post spacing question", "MTBR forum", "2008", "mtbr.com");

    /// <summary>Standard Classification for Bicycle Usage, conditions 1 to 3.</summary>
    internal static readonly Source UseConditions2000 = new("USE-CONDITIONS-2000", SourceKind.Standard, Confidence.Medium, "ASTM F2043-00 Standard Classification for Bicycle Usage (sample page)", "iTeh / ASTM", "2000", "standards.iteh.ai/catalog/standards/astm/a1b0baa2-eedd-4622-952e-b407555e13ba/astm-f2043-00");

    /// <summary>The categories of ASTM F2043 as a wheel maker's manual prints them.</summary>
    internal static readonly Source UseCategories = new("USE-CATEGORIES", SourceKind.MakerDocument, Confidence.Medium, "Wheel manual, page 57: intended use by ASTM F2043 categories", "DT Swiss (manual library copy)", "undated", "manualslib.fr/manual/870628/Dt-Swiss-R-414.html?page=57");

    /// <summary>Mountain bike user manual, intended use and limit of rider and baggage.</summary>
    internal static readonly Source MountainManual = new("MOUNTAIN-MANUAL", SourceKind.MakerDocument, Confidence.Medium, "Mountain bike user manual: intended use", "Canyon (manual library copy)", "undated", "manualshive.com/en/manual/canyon/mountain-bike/mountain-bike_manual_493849-4.html");

    /// <summary>Bicycle manual, appendix with the limits of rider, luggage and both.</summary>
    internal static readonly Source RiderAndLuggage = new("RIDER-AND-LUGGAGE", SourceKind.MakerDocument, Confidence.Medium, "Bicycle manual, appendix A: maximum weight limit", "Focus (manual library copy)", "undated", "easymanua.ls/focus-bikes/bicycle/manual?p=26");

    /// <summary>Fork owner's manual, limits of rider and cargo with worked examples.</summary>
    internal static readonly Source ForkLoad = new("FORK-LOAD", SourceKind.MakerDocument, Confidence.Medium, "Fork owner's manual: structural and braking weight limits", "Specialized (document copy)", "2009", "yumpu.com/en/document/view/45121258/2009-afr-fork-owners-manual-specialized-bicycles");

    /// <summary>What instructions have to say of the weight of rider and luggage and of the whole.</summary>
    internal static readonly Source TwoLimits = new("TWO-LIMITS", SourceKind.Standard, Confidence.Medium, "TBIS 15194:2019, page 124: what the instructions say", "Taiwan Bicycle Association", "2019", "chctest.tbnet.org.tw/eBOOK-TBIS/15194/EN/files/basic-html/page124.html");

    /// <summary>What a laden weight is.</summary>
    internal static readonly Source LadenWeight = new("LADEN-WEIGHT", SourceKind.Community, Confidence.Low, "How is the max load in the bike specifications defined", "Bicycles Stack Exchange", "2023", "bicycles.stackexchange.com/questions/90998");

    /// <summary>Owner's manual, appendix C, p. 77.</summary>
    internal static readonly Source CargoBoltList = new("CARGO-BOLT-LIST", SourceKind.MakerDocument, Confidence.Medium, "Owner's manual, appendix C, p. 77", "Yuba", "n.d.", "manualshive.com/en/manual/yuba/spucy-curry/3667378?page=77");

    /// <summary>Owner's manual 236.17.0, recommended torque settings, p. 51.</summary>
    internal static readonly Source OwnersTorques2017 = new("OWNERS-TORQUES-2017", SourceKind.MakerDocument, Confidence.Medium, "Owner's manual 236.17.0, recommended torque settings, p. 51", "Centurion", "2017", "manualshive.com/en/manual/centurion/236-17-0/2582828?page=51");

    /// <summary>Torque Specifications (frame maker's list).</summary>
    internal static readonly Source FrameMakersTorques = new("FRAME-MAKERS-TORQUES", SourceKind.MakerDocument, Confidence.Medium, "Torque Specifications (frame maker's list)", "Village Cycle Center", "n.d.", "villagecycle.com/how-to/torque-specifications-pg619.htm");

    /// <summary>Torque Table.</summary>
    internal static readonly Source ShopTorqueTable = new("SHOP-TORQUE-TABLE", SourceKind.Community, Confidence.Low, "Torque Table", "Dedham Bike", "n.d.", "dedhambike.com/articles/torque-table-pg186.htm");

    /// <summary>User Guide 2002, p. 24.</summary>
    internal static readonly Source GuideTorques2002 = new("GUIDE-TORQUES-2002", SourceKind.MakerDocument, Confidence.Medium, "User Guide 2002, p. 24", "Gary Fisher", "2002", "38.142.81.21:8001/manual/gary-fisher/2002-gary-fisher-bicycles/user-guide-english/page-25.html");

    /// <summary>Service instructions, mechanical disc brake (SI-8E80A).</summary>
    internal static readonly Source DiscMakersSheet = new("DISC-MAKERS-SHEET", SourceKind.MakerDocument, Confidence.Medium, "Service instructions, mechanical disc brake (SI-8E80A)", "Shimano (copy at ManualMachine)", "n.d.", "manualmachine.com/shimano/si8e80a/10360998-service-instructions");

    /// <summary>Service instructions, mechanical disc brake and six-bolt rotor (BR-M416-A / SM-RT51).</summary>
    internal static readonly Source RotorMakersSheet = new("ROTOR-MAKERS-SHEET", SourceKind.MakerDocument, Confidence.Medium, "Service instructions, mechanical disc brake and six-bolt rotor (BR-M416-A / SM-RT51)", "Shimano (copy at Manuzoid)", "n.d.", "manuzoid.com/manuals/5rN8G-Shimano%20BR-M416-A%20Service%20Instructions");

    /// <summary>Hydraulic caliper brake installation and hose length changes.</summary>
    internal static readonly Source HydraulicCaliperGuide = new("HYDRAULIC-CALIPER-GUIDE", SourceKind.MakerDocument, Confidence.Medium, "Hydraulic caliper brake installation and hose length changes", "Park Tool", "n.d.", "parktool.com/blog/repair-help/avid-reg-hydraulic-caliper-brake-installation-hose-length-changes");

    /// <summary>Torque specs and settings (quotes a frame maker's manual).</summary>
    internal static readonly Source CarbonRoadTorques = new("CARBON-ROAD-TORQUES", SourceKind.Community, Confidence.Low, "Torque specs and settings (quotes a frame maker's manual)", "bikesnbites.com", "2016", "bikesnbites.com/cervelo-torque-specs-and-settings/");

    /// <summary>Torque specs: proper bolt tightening.</summary>
    internal static readonly Source BoltTorqueGuide = new("BOLT-TORQUE-GUIDE", SourceKind.Community, Confidence.Low, "Torque specs: proper bolt tightening", "bikemaintenancepros.com", "n.d.", "bikemaintenancepros.com/torque-specs-proper-bolt-tightening");

    /// <summary>Proper torque spec for stem top-cap screw (forum).</summary>
    internal static readonly Source TopCapThread = new("TOP-CAP-THREAD", SourceKind.Community, Confidence.Low, "Proper torque spec for stem top-cap screw (forum)", "Weight Weenies", "n.d.", "weightweenies.starbike.com/forum/viewtopic.php?p=795721");

    /// <summary>Overtightened hex thru-axles (in Japanese).</summary>
    internal static readonly Source HexAxlePage = new("HEX-AXLE-PAGE", SourceKind.Community, Confidence.Low, "Overtightened hex thru-axles (in Japanese)", "The Trail Store (blog)", "2022", "blog.goo.ne.jp./thetrailstore/d/20220816");

    /// <summary>Crank pinch bolt note.</summary>
    internal static readonly Source PinchBoltNote = new("PINCH-BOLT-NOTE", SourceKind.Community, Confidence.Low, "Crank pinch bolt note", "gist.github.com", "n.d.", "gist.github.com/skalnik/fc52a49b3c6fb1e60af5");

    /// <summary>Why do we use torque wrenches (quotes a derailleur's printed torque).</summary>
    internal static readonly Source PrintedTorque = new("PRINTED-TORQUE", SourceKind.Community, Confidence.Low, "Why do we use torque wrenches (quotes a derailleur's printed torque)", "tools-sets.com", "undated", "tools-sets.com/9739-2");

    /// <summary>ISO 4210-2:2014, clause 4.3 (excerpt).</summary>
    internal static readonly Source JointStrength = new("JOINT-STRENGTH", SourceKind.Standard, Confidence.Medium, "ISO 4210-2:2014, clause 4.3 (excerpt)", "ISO", "2014", "ulstandardspdf.com/iso-4210-2-2014-pdf-free.html");

    /// <summary>TBIS 4210-2:2018 (text of ISO 4210-2:2014), clauses 4.5 to 4.7.</summary>
    internal static readonly Source AssemblyClauses = new("ASSEMBLY-CLAUSES", SourceKind.Standard, Confidence.Medium, "TBIS 4210-2:2018 (text of ISO 4210-2:2014), clauses 4.5 to 4.7", "Taiwan Bicycle Industry Standard", "2018", "chctest.tbnet.org.tw/eBOOK-TBIS/02/EN/files/basic-html/page19.html");

    /// <summary>Test of the grip distance of brake levers, JIS D 9301:2019 (in Japanese).</summary>
    internal static readonly Source LeverReachTest = new("LEVER-REACH-TEST", SourceKind.Standard, Confidence.Medium, "Test of the grip distance of brake levers, JIS D 9301:2019 (in Japanese)", "Japan Bicycle Promotion Institute", "2019", "jbpi giken_post/exam/bicycle/handle/4591");

    /// <summary>16 CFR 1512.5 Requirements for braking system.</summary>
    internal static readonly Source LeverRegulation = new("LEVER-REGULATION", SourceKind.Standard, Confidence.High, "16 CFR 1512.5 Requirements for braking system", "US Code of Federal Regulations", "undated", "law.cornell.edu/cfr/text/16/1512.5");

    /// <summary>16 CFR 1512.16 Requirements for reflectors.</summary>
    internal static readonly Source ReflectorRegulation = new("REFLECTOR-REGULATION", SourceKind.Standard, Confidence.Medium, "16 CFR 1512.16 Requirements for reflectors, as quoted in a forum", "US Code of Federal Regulations", "undated", "qastack.com.de/bicycles/44215");

    /// <summary>Rules for riding on the road in Germany, by an owner's manual (in German).</summary>
    internal static readonly Source GermanRoadRules = new("GERMAN-ROAD-RULES", SourceKind.MakerDocument, Confidence.Medium, "Rechtliche Anforderungen f\u00FCr den Stra\u00DFeneinsatz, owner's manual, p. 12 (in German)", "BMW", "undated", "easymanua.ls/bmw/cruise-bike/manual?p=12");

    /// <summary>How to remove a cartridge bearing bottom bracket.</summary>
    internal static readonly Source CartridgeTools = new("CARTRIDGE-TOOLS", SourceKind.Community, Confidence.Low, "How to Remove a Cartridge Bearing Bottom Bracket", "bikerepairvideos.com", "undated", "bikerepairvideos.com/remove-cartridge-bearing-bottom-bracket/");

    /// <summary>EN 14766:2005, clause 4.10 (wheel retention and quick release).</summary>
    internal static readonly Source RetentionClauses = new("RETENTION-CLAUSES", SourceKind.Standard, Confidence.Medium, "EN 14766:2005, clause 4.10 (wheel retention and quick release)", "CEN", "2005", "");

    /// <summary>TBIS 79010, clause 4.2.2.3 (ends of cables).</summary>
    internal static readonly Source CableEndClause = new("CABLE-END-CLAUSE", SourceKind.Standard, Confidence.Medium, "TBIS 79010, clause 4.2.2.3 (ends of cables)", "Taiwan Bicycle Industry Standard", "undated", "chctest.tbnet.org.tw");

    /// <summary>TBIS 15194:2019, clause 4.3.6.5 (steering lock).</summary>
    internal static readonly Source SteeringLockClause = new("STEERING-LOCK-CLAUSE", SourceKind.Standard, Confidence.Medium, "TBIS 15194:2019, clause 4.3.6.5 (steering lock)", "Taiwan Bicycle Association", "2019", "chctest.tbnet.org.tw");

    /// <summary>ISO 4762, socket head cap screws: the size of the hexagon socket by thread.</summary>
    internal static readonly Source SocketHeads = new("SOCKET-HEADS", SourceKind.Handbook, Confidence.Medium, "ISO 4762, Hexagon Socket Cap Head Screw Dimensions (table)", "geartoolkit.com", "undated", "geartoolkit.com/standard/iso/iso-4762/");

    /// <summary>Pedal spanners: 15 mm flats, 6 or 8 mm sockets.</summary>
    internal static readonly Source PedalSpanners = new("PEDAL-SPANNERS", SourceKind.Handbook, Confidence.Medium, "Bicycles/Maintenance and Repair: Pedal Wrench", "Wikibooks", "undated", "en.wikibooks.org/wiki/Bicycles/Maintenance_and_Repair/Tools_and_Supplies/Pedal_Wrench");

    /// <summary>Bolts of square-taper cranks: 8 mm socket, 14 or 15 mm head.</summary>
    internal static readonly Source CrankBoltHeads = new("CRANK-BOLT-HEADS", SourceKind.Handbook, Confidence.Medium, "Crank Installation and Removal: Square Spindle Type", "Park Tool", "undated", "parktool.com/blog/repair-help/crank-installation-and-removal-square-spindle-type");

    /// <summary>Spanners for axle nuts.</summary>
    internal static readonly Source WheelTools = new("WHEEL-TOOLS", SourceKind.Community, Confidence.Low, "What Tools Do You Need to Remove a Bike Wheel?", "engineerfix.com", "undated", "engineerfix.com/what-tools-do-you-need-to-remove-a-bike-wheel");

    /// <summary>Keys for thru-axles.</summary>
    internal static readonly Source AxleTools = new("AXLE-TOOLS", SourceKind.Community, Confidence.Low, "How To Remove Rear Axle From Bicycle Wheel", "wheelyap.com", "undated", "wheelyap.com/how-to-remove-rear-axle-from-bicycle-wheel");

    /// <summary>Keys for rear derailleurs.</summary>
    internal static readonly Source DerailleurTools = new("DERAILLEUR-TOOLS", SourceKind.Community, Confidence.Low, "How To Replace The Rear Derailleur On A Bicycle", "wheelyap.com", "undated", "wheelyap.com/how-to-replace-the-rear-derailleur-on-a-bicycle");

    /// <summary>Spanner for the locknut of a threaded headset of 1 in.</summary>
    internal static readonly Source HeadsetService = new("HEADSET-SERVICE", SourceKind.Community, Confidence.Low, "Servicing threaded headsets", "VeloWeb", "2012", "veloweb.ca/garage/servicing-threaded-headsets/");

    /// <summary>Every source of the register.</summary>
    public static ImmutableArray<Source> All { get; } =
    [
        Memory, CommonPractice, Derived, FreehubTypes, AxleGuide, HubStandards,
        Boost148Explained, AdapterGuide, MountAnswer, WheelBuilderAxles, WheelAdvice, SprocketCarrier,
        N3wPage, FreehubLengths, FlatMountBuilder, EightSpline, AxleWidths157, XdrExplained,
        FreehubPage, CassetteFaq, TwelveGuide, MountTechInfo, MountForum, IsAdapters,
        Freewheels, FlatMountProblem, AxleStandardsBlog, Axle20Article, XdExplained, TrialsHubs,
        SuperBoostPress, SprocketExchange, SixBoltAndSplined, FrameSpacing, CassetteWidths, BoostBlog,
        TwelveOnEleven, SixMillimetre, LockringArticle, HubGearPage, GearHubChainline, FrameBuilder148,
        FatRearEnds, EndCapPage, BoostTrade, AdaptersPage, SpreadPost, SingleChainline,
        HubStandardsPage, FlatOnPost, FatHubSpacing, EndCapForum, Chainline135, Boost148Press,
        AxleNut, BeadSeats, BeadSeatSingle, Iso5775Part2Extract, Iso5775Article, WidthRanges2022,
        WidthMatrix2006, HooklessIso2023, HooklessGap, TyreStatement, WidthGuideline, BeadInterchange,
        OptimalRim, HooklessPressure, SizeDesignation, MeasuringRims2020,
        RimsJapan, DecimalSizes, SizeChart, SizeList, CrossReference, TyreMakerSizes,
        FrenchDiameters, TyreSizeGuide, OldDutchSizes, DutchAndGermanOrder, SixteenInchSizes,
        ImperialAndUs27, WideRimStatement, HooklessRumour, ValveDrilling,
        RimTable, WheelDataSheet, ValveArticle, HubMeasuring, RoadTubeless2017,
        RimDiameterFromLabel, ManyThruAxles,
        PostSizes, PostSizesCanada, DropperAnatomy, PostModernism, CollarPage, ClampShop,
        SeatRegulation, FrameManual, FrenchPosts, RoadPostFeature, FoldingPosts,
        HeadsetCodeNote, HeadsetCodeOverview, HeadsetChart, HeadsetGuide, PressFitRule, HeadTubeReaming,
        OneInchHeadsets, HeadsetArticle, FrontTriangleManual, HeadTube44, HeadTubeComment, StraightSteerer,
        CrownRaceGuide, BearingSeller, BearingMeasure, ForkCutting, IntegratedHeadsets, StraightInTapered,
        CableHeadsets, OneInchAgainstLarger, SteererRequirement, BarAndStemTable, GripFit, BarSizes,
        StemSizes, QuillArticle, ThruAxleHelp, ThruAxleMaker, ThruAxleGuide, UniversalHangerMaker,
        UniversalHangerPress, UniversalHangerGravel, UniversalHangerNews, DirectMountHanger, UnthreadedEnds, HangersDemystified,
        ChainWidths, ChainCatalogue, ChainSizes, SprocketSpacing, WidthTolerance, WheelRegulation,
        BoltCircles, BoltHolePatterns, RingMeasuring, CrankPage, OffsetHole, BoltCircleHowTo,
        RingDecoder, RingOffsets, CrankLengths, CrankTable, FrontDerailleurs, FrontDerailleurCare,
        FrontDerailleurTypes, FrontMountSpacing, DerailleurCapacity, GuideTabs, GuideOnBracket, GearEquation,
        PullBlog, PullScience, ThickPlates, TenSpeedExample, SpacingCribSheet, CogPitch,
        CassetteSpacers, ChainlineTable, ChainlineNotes, ChainlineRoadDisc, OffsetAxle, ChainlineHelp,
        Chainline55, ChainlineRange, ChainlineFormula, SplinedBracketText,
        RacingClearance, WheelsManual, LargeFrontTyre, NutStripped,
        ShellThreads, UnthreadedShells, ShellThreadScope, CycleThreads, SpacerChart24, SpacerChart30,
        Overview2899, BracketStandards, BracketTable, BracketSense, BracketMisconceptions, CranksAndBrackets,
        BracketDetail, BracketGuide, T47Width, T47Asymmetric, T47Twist, T47Woes,
        T47Dimensions, BmxBrackets, SpindleOptions, SpindleLaunch, SpindleSystem, SteppedSpindle,
        TaperMeasured, TaperSums, TaperExchange, SpacerPost, SpacerUpgrades, CupSpacers,
        ShortAndLongSplines, SpindleTypes, SplinedBrackets, TenSplineFaq, CotteredCranks, SwissThread,
        ThreadPeculiarities, OsbbGuide, OsbbExplained, RoadBrackets, ThreadConcepts, PedalAttachment,
        PedalThreadList, OnePiecePedals,
        Iso5775Part1Sample, TubeMismatch, CreakyBracket, ShellAdapterReport, BinderReport, CarbonPostCracks, BarMismatch,
        OlderIso5775,
        MeasuringRims,

        RaceAndSeatPair, BearingAngles, HeadsetTypes, HeadTubeCutters, SteererNotes, RaceMilling,
        FrameBearingsMeasured, CarbonFrameBearings, RadialHeadBearing, RaceFitting, SteererCutExample, SteererGap,
        SpacerColumn, SpacerLimitThread, SpacerLimitQuoted, SpacerArrangements, SpacersAbove, LeverSeats,
        CorrectedFork, ForkLengthBlog, ForkTravel, InchShockSizes, MetricShockSizes, ShockMeasuring,
        EyeletBushings, RakeAndTrail, TrunnionWear, ForkLengths2015, CrossForks, ForkLengthGuide,
        BmxForkSizing, BmxForkShop, CrossForkLength, ForkPair, ForkGeometryNotes, ShockSizeList,
        InlineShockSizes, ShockOptions, ShockDetails, ShockStory, ShockProduct, TrunnionShockReview,
        AirShockReview, MetricShockLaunch, MetricShockNews,

        LockringExchange, RotorFaq, WornRotors,
        BrazeOnDistances, FlatMountClearing, ReachPitfalls, ReachMeasuring,
        ReachClasses, ReachShop, BrakesBlog, LeverPull, MechanicalBrakes, DirectPullArticle,
        BrazedOnBrakes, FluidGuide, InsertionArticle, SlipFitColumn, DropperChoice, LongDropper,
        OddPostMeasured,
        LoadedRims,
        BeltConversion, SplitFrames, BeltTracks, FlangedBelt, CoasterBrakes, DrumArmClip, DrumArmLoose,
        HubDynamos, DynamoConnectors, DynamoPlug, WiredShift, WirelessShift, HydraulicShift,
        TallSplines, FixedLockring,


        GearInchesPage, GainRatios, HubGearFractions, HubGearArticle, YouthLimits, YouthLimitsChanged,
        RollerChainTextbook, RollerChainPage, ChainLengthThread, ChainSizing, ChainWearLimits, ChainWearShop,
        ChainWearRuler, TotalCapacity, ChainlineMeasuring, ChainAngle,

        SpokeFormula, SpokeCorrections, FlangeOffsetSum, RimGlossary, SpokeTensions, CalibrationPage,
        RolloutChart, RolloutSizes, LoadedRollout, RimWidthMeasuring, WidthOnWiderRim, PressureByWeight,
        LowerMarking, PressureAndWidth, RotorInterchange, LeverageColumn, SagByRiding, SagInGeneral,
        DownhillForkSag,

        GeometryArticle, FlopExplained, ClearanceRegulation, ToeClearanceTest,
        StemMath, StemAngles, StarNutSetting, DropperTips, SaddleAdjustment, InseamMeasuring,
        SizingChartPost, SaddleRegression, CrankFormula, CrankFormulaRange, CrankLengthPost,
        CarbonRimPads, SplinedRotorNotes, OpenEndsGlossary, NonTurnWashers, FlatMountBolts, FlatMountThinStay,
        CantileverSpacing,
        ReuseInspection, UsedBicycle, CarbonCrashManual, CarbonFrameManual, AlloyBarsAfterFall, AlloyPartsLife,
        RimWall, RimWallBreaks, ChainWithSprockets, OneSprocketLine, BrakeHands, BrakeHandsByCountry, DownTubeClearance,
        UseConditions2000, UseCategories, MountainManual, RiderAndLuggage, ForkLoad, TwoLimits, LadenWeight,

        CargoBoltList, OwnersTorques2017, FrameMakersTorques, ShopTorqueTable, GuideTorques2002, DiscMakersSheet, RotorMakersSheet, HydraulicCaliperGuide,
        CarbonRoadTorques, BoltTorqueGuide, TopCapThread, HexAxlePage, PinchBoltNote, PrintedTorque, JointStrength,
        AssemblyClauses, LeverReachTest, LeverRegulation, ReflectorRegulation, GermanRoadRules, CartridgeTools, RetentionClauses, CableEndClause, SteeringLockClause,
        SocketHeads, PedalSpanners, CrankBoltHeads, WheelTools, AxleTools, DerailleurTools, HeadsetService,
    ];

    /// <summary>The source with this id, in capitals or not; null where there is none.</summary>
    /// <param name="id">An id as <see cref="Source.Id"/> gives it: "CFR-1512-15".</param>
    public static Source? Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        foreach (Source source in All)
        {
            if (source.Id.Equals(id, StringComparison.OrdinalIgnoreCase))
            {
                return source;
            }
        }

        return null;
    }
}
