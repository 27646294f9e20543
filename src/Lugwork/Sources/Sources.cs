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
    public static Source FreehubTypes { get; } = new("FREEHUB-TYPES", SourceKind.Handbook, Confidence.Medium, "Freehub types, standards for road and MTB wheels", "Cyclabo", "2023", "cyclabo.com/topics/shpw0w3wbb");

    /// <summary>A guide to mountain bike axle standards.</summary>
    public static Source AxleGuide { get; } = new("AXLE-GUIDE", SourceKind.Press, Confidence.Medium, "A guide to mountain bike axle standards", "BikeRadar (Immediate Media)", "2020s", "bikeradar.com/features/a-guide-to-mountain-bike-axle-standards/");

    /// <summary>Hub 'Standards'.</summary>
    public static Source HubStandards { get; } = new("HUB-STANDARDS", SourceKind.MakerDocument, Confidence.Medium, "Hub 'Standards'", "Boyd Cycling", "2020", "boydcycling.com/blogs/news/hub-standards");

    /// <summary>Tech Talk: Boost 148 explained (Art's Cyclery text, republished).</summary>
    public static Source Boost148Explained { get; } = new("BOOST-148-EXPLAINED", SourceKind.Press, Confidence.Medium, "Tech Talk: Boost 148 explained (Art's Cyclery text, republished)", "Art's Cyclery / zenocycleparts", "2015", "zenocycleparts.com/blogs/mountain-bike-review/tech-talk-boost-148-explained");

    /// <summary>How to Choose the Right Disc Brake Adapter.</summary>
    public static Source AdapterGuide { get; } = new("ADAPTER-GUIDE", SourceKind.Handbook, Confidence.Medium, "How to Choose the Right Disc Brake Adapter", "Loam Goat", "undated", "loamgoat.com/blogs/knowledge/stop-guessing-here-s-how-to-choose-the-right-disc-brake-adapter");

    /// <summary>Answer on IS and post mount (Japanese copy of a Bicycles QandA answer).</summary>
    public static Source MountAnswer { get; } = new("MOUNT-ANSWER", SourceKind.Community, Confidence.Medium, "Answer on IS and post mount (Japanese copy of a Bicycles Q&A answer)", "Bicycles Stack Exchange copy", "undated", "ja.bicycles.asklobster.com/posts/44161");

    /// <summary>Axle and hub standards, cassette compatibility and rotor mounting.</summary>
    public static Source WheelBuilderAxles { get; } = new("WHEEL-BUILDER-AXLES", SourceKind.Community, Confidence.Low, "Axle and hub standards, cassette compatibility and rotor mounting", "Dandy Horse", "undated", "dandyhorse.cc/en/axle-and-hub-standards-cassette-compatibility-and-rotor-mounting-how-to-measure-and-choose");

    /// <summary>Information and Advice: Bicycle Wheels (O.L.D. list).</summary>
    public static Source WheelAdvice { get; } = new("WHEEL-ADVICE", SourceKind.Handbook, Confidence.Medium, "Information & Advice: Bicycle Wheels (O.L.D. list)", "Moruya Bicycles", "undated", "moruyabicycles.com.au/contents/en-uk/d1281_Info___Advice.html");

    /// <summary>Splined sprocket carrier (workshop handbook).</summary>
    public static Source SprocketCarrier { get; } = new("SPROCKET-CARRIER", SourceKind.MakerDocument, Confidence.Medium, "Splined sprocket carrier (workshop handbook)", "Rohloff", "undated", "rohloff.de/en/service/handbook/speedhub/workshop/splined-carrier-conversion");

    /// <summary>1x13 gravel group and the N3W body.</summary>
    public static Source N3wPage { get; } = new("N-3W-PAGE", SourceKind.Community, Confidence.Low, "1x13 gravel group and the N3W body", "cbnanashi blog; chan-bike.com", "2020", "blog.cbnanashi.net/2020/07/14768; chan-bike.com/?p=42784");

    /// <summary>Freehubs and cassettes (body length table).</summary>
    public static Source FreehubLengths { get; } = new("FREEHUB-LENGTHS", SourceKind.Community, Confidence.Medium, "Freehubs and cassettes (body length table)", "cornant.uk", "undated", "cornant.uk/info/cassettes.html");

    /// <summary>The problem with flat mount.</summary>
    public static Source FlatMountBuilder { get; } = new("FLAT-MOUNT-BUILDER", SourceKind.Community, Confidence.Low, "The problem with flat mount", "peterverdone.com", "undated", "peterverdone.com/the-problem-with-flat-mount");

    /// <summary>8-spline freehub bodies: which do you have?.</summary>
    public static Source EightSpline { get; } = new("EIGHT-SPLINE", SourceKind.Handbook, Confidence.Medium, "8-spline freehub bodies: which do you have?", "Branford Bike", "undated", "branfordbike.com/new-page-1");

    /// <summary>Our take on 157TRAIL aka Superboost axle widths.</summary>
    public static Source AxleWidths157 { get; } = new("AXLE-WIDTHS-157", SourceKind.MakerDocument, Confidence.Medium, "Our take on 157TRAIL aka Superboost axle widths", "Knolly Bikes", "2020", "knollybikes.com/post/talk-bike-nerdy-to-me-knolly-s-take-on-157trail-aka-superboost-axle-widths");

    /// <summary>XDR freehub body explained.</summary>
    public static Source XdrExplained { get; } = new("XDR-EXPLAINED", SourceKind.Press, Confidence.Medium, "XDR freehub body explained", "Bikerumor", "2017", "bikerumor.com/2017/09/05/sram-explains-xdr-freehub-body-will-make-12-speed-road-possible/");

    /// <summary>Freehub / cassette page.</summary>
    public static Source FreehubPage { get; } = new("FREEHUB-PAGE", SourceKind.MakerDocument, Confidence.Medium, "Freehub / cassette page", "Rol Wheels", "undated", "rolwheels.com/pages/freehub-cassette-compability");

    /// <summary>Cassette FAQ.</summary>
    public static Source CassetteFaq { get; } = new("CASSETTE-FAQ", SourceKind.Community, Confidence.Low, "Cassette FAQ", "BikeRadar forum", "2013", "forum.bikeradar.com/discussion/12905742");

    /// <summary>Guide for 11-speed, 12-speed and MS freehubs.</summary>
    public static Source TwelveGuide { get; } = new("TWELVE-GUIDE", SourceKind.MakerDocument, Confidence.Medium, "Guide for 11-speed, 12-speed and MS freehubs", "ICAN Cycling", "undated", "icancycling.com/blogs/articles/compatibility-guide-for-shimano-11-speed-12-speed-and-ms-series-freehub-and-cassettes");

    /// <summary>Disc Brake Mounting Standards.</summary>
    public static Source MountTechInfo { get; } = new("MOUNT-TECH-INFO", SourceKind.Handbook, Confidence.Medium, "Disc Brake Mounting Standards", "Bikeman tech info", "undated", "bikeman.com/bicycle-repair-tech-info/bikeman-tech-info/1638-51mm-international-standard-74mm-post-mount");

    /// <summary>Disc mounts, an explanation.</summary>
    public static Source MountForum { get; } = new("MOUNT-FORUM", SourceKind.Community, Confidence.Low, "Disc mounts, an explanation", "BikeRadar forum", "2007", "forum.bikeradar.com/viewtopic.php?t=1590919");

    /// <summary>International Standard Brake Mounting IS Better.</summary>
    public static Source IsAdapters { get; } = new("IS-ADAPTERS", SourceKind.Community, Confidence.Medium, "International Standard Brake Mounting IS Better", "Essential Cycles", "undated", "essentialcycles.com/post/international-standard-brake-mount-tt-3");

    /// <summary>Traditional Thread-on Freewheels.</summary>
    public static Source Freewheels { get; } = new("FREEWHEELS", SourceKind.Handbook, Confidence.High, "Traditional Thread-on Freewheels", "sheldonbrown.com", "undated", "sheldonbrown.com/freewheels.html");

    /// <summary>The problem with flat mount brakes.</summary>
    public static Source FlatMountProblem { get; } = new("FLAT-MOUNT-PROBLEM", SourceKind.Community, Confidence.Medium, "The problem with flat mount brakes", "michaelhanslip.com", "2024", "michaelhanslip.com/blog/files/27501a5a925112db682429133f801661-115.html");

    /// <summary>MTB Axle Standards Explained.</summary>
    public static Source AxleStandardsBlog { get; } = new("AXLE-STANDARDS-BLOG", SourceKind.Community, Confidence.Medium, "MTB Axle Standards Explained", "darrenlugg.co.uk", "2017", "darrenlugg.co.uk/news/30/16/MTB-Axle-Standards-Explained-Cycling-Content-Example-Darren-Lugg");

    /// <summary>Dear bike industry: really, a 'new' 20x110mm axle standard?!?!.</summary>
    public static Source Axle20Article { get; } = new("AXLE-20-ARTICLE", SourceKind.Press, Confidence.Medium, "Dear bike industry: really, a 'new' 20x110mm axle standard?!?!", "BikeRadar (Immediate Media)", "2016", "bikeradar.com/features/dear-bike-industry-really-a-new-20x110mm-axle-standard/");

    /// <summary>XD driver body explained (BikeRadar text, republished).</summary>
    public static Source XdExplained { get; } = new("XD-EXPLAINED", SourceKind.Press, Confidence.Medium, "XD driver body explained (BikeRadar text, republished)", "BikeRadar copy", "2015", "foldbikesparty.blogspot.com/2015/06/sram-xd-driver-body-explained.html");

    /// <summary>Rear hubs / Front hubs (trials).</summary>
    public static Source TrialsHubs { get; } = new("TRIALS-HUBS", SourceKind.Handbook, Confidence.Medium, "Rear hubs / Front hubs (trials)", "trial-bikes.com", "undated", "trial-bikes.com/en/content/rear-hubs.html");

    /// <summary>Super Boost Plus 157 rear axle standard - is it here to stay?.</summary>
    public static Source SuperBoostPress { get; } = new("SUPER-BOOST-PRESS", SourceKind.Press, Confidence.Medium, "Super Boost Plus 157 rear axle standard - is it here to stay?", "Enduro MTB", "2020", "enduro-mtb.com/en/super-boost-plus-standard/");

    /// <summary>Sprocket and wheel interchange explained.</summary>
    public static Source SprocketExchange { get; } = new("SPROCKET-EXCHANGE", SourceKind.Handbook, Confidence.Medium, "Sprocket and wheel interchange explained", "Cyclabo", "2021, rev 2023", "cyclabo.com/topics/xag5agdoa4/");

    /// <summary>6-bolt rotors and splined hubs.</summary>
    public static Source SixBoltAndSplined { get; } = new("SIX-BOLT-AND-SPLINED", SourceKind.Community, Confidence.Medium, "6-bolt rotors and splined hubs", "brainybiker.com", "undated", "brainybiker.com/the-compatibility-of-6-bolt-rotors-and-centerlock-hubs/");

    /// <summary>Bicycle Frame/Hub Spacing.</summary>
    public static Source FrameSpacing { get; } = new("FRAME-SPACING", SourceKind.Handbook, Confidence.High, "Bicycle Frame/Hub Spacing", "sheldonbrown.com", "undated", "sheldonbrown.com/frame-spacing.html");

    /// <summary>Cassette total widths (table).</summary>
    public static Source CassetteWidths { get; } = new("CASSETTE-WIDTHS", SourceKind.Community, Confidence.Low, "Cassette total widths (table)", "brainybiker.com", "undated", "brainybiker.com/archives/18693");

    /// <summary>How do I know if I have a Boost rear hub?.</summary>
    public static Source BoostBlog { get; } = new("BOOST-BLOG", SourceKind.Community, Confidence.Low, "How do I know if I have a Boost rear hub?", "celiamania.com", "undated", "celiamania.com/?cat=99");

    /// <summary>12-speed cassette on an 11-speed hub.</summary>
    public static Source TwelveOnEleven { get; } = new("TWELVE-ON-ELEVEN", SourceKind.Community, Confidence.Low, "12-speed cassette on an 11-speed hub", "brainybiker.com", "undated", "brainybiker.com/installing-a-12-speed-cassette-on-an-11-speed-hub-possible-or-not/");

    /// <summary>Mountain Hub Spacing: The 6-Millimeter Conundrum.</summary>
    public static Source SixMillimetre { get; } = new("SIX-MILLIMETRE", SourceKind.MakerDocument, Confidence.Medium, "Mountain Hub Spacing: The 6-Millimeter Conundrum", "Roval Components", "undated", "rovalcomponents.com/blogs/journal/the-6-millimeter-conundrum");

    /// <summary>Threaded #17: Centerlock rotor lockring things.</summary>
    public static Source LockringArticle { get; } = new("LOCKRING-ARTICLE", SourceKind.Press, Confidence.Medium, "Threaded #17: Centerlock rotor lockring things", "Escape Collective", "2024", "escapecollective.com/threaded-17-centerlock-rotor-lockring-things");

    /// <summary>Alles ueber Nabenschaltungen (sprocket paragraph).</summary>
    public static Source HubGearPage { get; } = new("HUB-GEAR-PAGE", SourceKind.Handbook, Confidence.Medium, "Alles ueber Nabenschaltungen (sprocket paragraph)", "WikiPedalia", "undated", "wikipedalia.com/index.php/Spezial:Mobiler_Unterschied/9828");

    /// <summary>Chainline and Overlocknut Distance on Bicycles with Internal-Gear Hubs.</summary>
    public static Source GearHubChainline { get; } = new("GEAR-HUB-CHAINLINE", SourceKind.Handbook, Confidence.Medium, "Chainline and Overlocknut Distance on Bicycles with Internal-Gear Hubs", "sheldonbrown.com", "undated", "sheldonbrown.com/chainline-internal-gear.html");

    /// <summary>148x12, the future.</summary>
    public static Source FrameBuilder148 { get; } = new("FRAME-BUILDER-148", SourceKind.Community, Confidence.Medium, "148x12, the future", "Waltworks", "2015", "waltworks.com/2015/03/all-words-no-pics-ken-148x12-future/");

    /// <summary>Understanding Drivetrain and Rear Tire Capacity.</summary>
    public static Source FatRearEnds { get; } = new("FAT-REAR-ENDS", SourceKind.MakerDocument, Confidence.Medium, "Understanding Drivetrain & Rear Tire Capacity", "Salsa Cycles", "2012", "salsacycles.com/culture/tech_talk_understanding_drivetrain_rear_tire_capacity");

    /// <summary>What are Torque Caps?.</summary>
    public static Source EndCapPage { get; } = new("END-CAP-PAGE", SourceKind.MakerDocument, Confidence.Medium, "What are Torque Caps?", "NOBL Wheels", "undated", "noblwheels.com/blog/what-are-torque-caps/");

    /// <summary>Boost Your Potential For Growth.</summary>
    public static Source BoostTrade { get; } = new("BOOST-TRADE", SourceKind.Press, Confidence.Medium, "Boost Your Potential For Growth", "QBP", "2015", "qbp.com/call_up/boost-your-potential-for-growth");

    /// <summary>Rubber Side Down: Disc Brake Adapters.</summary>
    public static Source AdaptersPage { get; } = new("ADAPTERS-PAGE", SourceKind.Handbook, Confidence.Medium, "Rubber Side Down: Disc Brake Adapters", "Art's Cyclery", "2014", "blog.artscyclery.com/keeping-the-rubber-side-down/rubber-side-down-disc-brake-adapters/");

    /// <summary>Mailing-list post by the same reference site on fitting a 130 mm hub in a 126 mm frame.</summary>
    public static Source SpreadPost { get; } = new("SPREAD-POST", SourceKind.Handbook, Confidence.Medium, "Mailing-list post by the same reference site on fitting a 130 mm hub in a 126 mm frame", "Classic Rendezvous list archive", "2004", "smontanaro.net/CR/2004/7/785");

    /// <summary>Chainline, single-speed.</summary>
    public static Source SingleChainline { get; } = new("SINGLE-CHAINLINE", SourceKind.Handbook, Confidence.Medium, "Chainline, single-speed", "sheldonbrown.com", "undated", "sheldonbrown.com/chainline-single.html");

    /// <summary>Know Your Hub Standards.</summary>
    public static Source HubStandardsPage { get; } = new("HUB-STANDARDS-PAGE", SourceKind.MakerDocument, Confidence.Medium, "Know Your Hub Standards", "Pub Wheels", "undated", "pubwheels.com/blogs/news/know-your-hub-standards");

    /// <summary>A flat mount disc caliper on a post mount frame? (press text, republished).</summary>
    public static Source FlatOnPost { get; } = new("FLAT-ON-POST", SourceKind.Press, Confidence.Medium, "A flat mount disc caliper on a post mount frame? (press text, republished)", "CyclingTips copy", "2022", "michmutters.com/a-flat-mount-disc-caliper-on-a-post-mount-frame-theres-an-adapter-for-that/");

    /// <summary>Decoding fatbike hub spacing and drivetrain.</summary>
    public static Source FatHubSpacing { get; } = new("FAT-HUB-SPACING", SourceKind.Press, Confidence.Medium, "Decoding fatbike hub spacing and drivetrain", "Bikerumor with a chainring maker", "2014", "bikerumor.com/tech-speak-decoding-fatbike-hub-spacing-and-drivetrain-compatibility-with-wolf-tooth-components/");

    /// <summary>Rotor alignment and a 100 mm hub with 3.5 mm end caps.</summary>
    public static Source EndCapForum { get; } = new("END-CAP-FORUM", SourceKind.Community, Confidence.Low, "Rotor alignment and a 100 mm hub with 3.5 mm end caps", "CycleChat forum", "2020", "cyclechat.net/threads/264136");

    /// <summary>How 135mm rear hub spacing affects road chainline and shifting.</summary>
    public static Source Chainline135 { get; } = new("CHAINLINE-135", SourceKind.Press, Confidence.Medium, "How 135mm rear hub spacing affects road chainline and shifting", "Bikerumor", "2012", "bikerumor.com/2012/11/28/tech-breakdown-how-135mm-rear-hub-spacing-affects-road-bike-chainline-shifting/");

    /// <summary>2016 axle standards part 1: rear 148mm thru axle.</summary>
    public static Source Boost148Press { get; } = new("BOOST-148-PRESS", SourceKind.Press, Confidence.Medium, "2016 axle standards part 1: rear 148mm thru axle", "Bikerumor", "2014", "bikerumor.com/2014/12/19/2016-axle-standards-part-1-rear-148mm-thru-axle-coming-fast-its-about-more-than-just-better-wheels");

    /// <summary>Axle nut.</summary>
    public static Source AxleNut { get; } = new("AXLE-NUT", SourceKind.Community, Confidence.Medium, "Axle nut", "wrenchfu.com", "undated", "wrenchfu.com/axle-nut/");

    /// <summary>Tire Sizing Systems.</summary>
    public static Source BeadSeats { get; } = new("BEAD-SEATS", SourceKind.Handbook, Confidence.Medium, "Tire Sizing Systems", "sheldonbrown.com", "1997-2024", "web.archive.org/web/20080108152809/http:/sheldonbrown.com/tire_sizing.html");

    /// <summary>ETRTO (ISO 5775), workshop wiki table.</summary>
    public static Source BeadSeatSingle { get; } = new("BEAD-SEAT-SINGLE", SourceKind.Handbook, Confidence.Low, "ETRTO (ISO 5775), workshop wiki table", "Wiklou, wiki of L'Atelier du velo, Lyon", "2024", "wiklou.org/wiki/ETRTO_(ISO_5775)");

    /// <summary>BS ISO 5775-2:2015 Bicycle tyres and rims, Part 2: Rims - scope and clause extract.</summary>
    public static Source Iso5775Part2Extract { get; } = new("ISO-5775-PART-2-EXTRACT", SourceKind.Standard, Confidence.Medium, "BS ISO 5775-2:2015 Bicycle tyres and rims, Part 2: Rims - scope and clause extract", "ulstandardspdf.com extract of BSI text", "2015", "www.ulstandardspdf.com/bs-iso-5775-2-2015-pdf-free.html");

    /// <summary>ISO 5775 (encyclopaedia article).</summary>
    public static Source Iso5775Article { get; } = new("ISO-5775-ARTICLE", SourceKind.Handbook, Confidence.Medium, "ISO 5775 (encyclopaedia article)", "Wikipedia", "read 2026-11", "en.wikipedia.org/wiki/ISO_5775");

    /// <summary>Compatibilite pneu / roues (table headed Norme ETRTO 2022).</summary>
    public static Source WidthRanges2022 { get; } = new("WIDTH-RANGES-2022", SourceKind.MakerDocument, Confidence.Medium, "Compatibilite pneu / roues (table headed Norme ETRTO 2022)", "distributor support page of a wheel maker (Axoreo)", "2022+", "axoreo.freshdesk.com/support/solutions/articles/77000546786-compatibilit%C3%A9-pneu-roues-reynolds");

    /// <summary>Zulaessige Kombinationen von Reifen und Felgen nach ETRTO, Stand 2006.</summary>
    public static Source WidthMatrix2006 { get; } = new("WIDTH-MATRIX-2006", SourceKind.Community, Confidence.Low, "Zulaessige Kombinationen von Reifen und Felgen nach ETRTO, Stand 2006", "de.rec.fahrrad wiki", "2006 state", "de-rec-fahrrad.de/_export/xhtml/technik/etrtotabelle");

    /// <summary>In conversation about hookless rims / De Gendt blowout report.</summary>
    public static Source HooklessIso2023 { get; } = new("HOOKLESS-ISO-2023", SourceKind.Press, Confidence.Medium, "In conversation about hookless rims / De Gendt blowout report", "road.cc", "2024", "road.cc/node/306947");

    /// <summary>Industry divided over new tyre rim-size regulations.</summary>
    public static Source HooklessGap { get; } = new("HOOKLESS-GAP", SourceKind.Press, Confidence.Low, "Industry divided over new tyre rim-size regulations", "Cycling Weekly", "2023-06-15", "gb.readly.com/magazines/cycling-weekly/2023-06-15/64887a335750442cff33b107");

    /// <summary>Tire compatibility statement (PDF).</summary>
    public static Source TyreStatement { get; } = new("TYRE-STATEMENT", SourceKind.MakerDocument, Confidence.Medium, "Tire compatibility statement (PDF)", "a hub and wheel maker (Chris King)", "2023", "cdn.shopify.com/s/files/1/2920/2114/files/Chris_King_Wheel_Tire_Statement.pdf");

    /// <summary>Bike tire width v rim width (reproduces the guideline of T21).</summary>
    public static Source WidthGuideline { get; } = new("WIDTH-GUIDELINE", SourceKind.Handbook, Confidence.Low, "Bike tire width v rim width (reproduces the guideline of T21)", "megalos.rs copy", "read 2026-11", "megalos.rs/gorod/bike-tire-width-vs-rim-width.html");

    /// <summary>Tyre and Wheel Sizes.</summary>
    public static Source BeadInterchange { get; } = new("BEAD-INTERCHANGE", SourceKind.Handbook, Confidence.Low, "Tyre and Wheel Sizes", "Bikefix", "read 2026-11", "bikefix.co.uk/tyre-and-wheel-sizes");

    /// <summary>Seatpost diameter sizes (standards).</summary>
    public static Source PostSizes { get; } = new("POST-SIZES", SourceKind.Handbook, Confidence.Medium, "Seatpost diameter sizes (standards)", "BikeGremlin", "16 Nov 2018", "bike.bikegremlin.com/3114/seat-post-diameter-sizes-standards/");

    /// <summary>Bar diameter; Seatpost diameter.</summary>
    public static Source PostSizesCanada { get; } = new("POST-SIZES-CANADA", SourceKind.Handbook, Confidence.Medium, "Bar diameter; Seatpost diameter", "standardbikes.ca", "n.d.", "standardbikes.ca/FldHelpPg.asp?FldHelpId=1390");

    /// <summary>The anatomy of a dropper post.</summary>
    public static Source DropperAnatomy { get; } = new("DROPPER-ANATOMY", SourceKind.Press, Confidence.Medium, "The anatomy of a dropper post", "BikeRadar", "n.d.", "www.bikeradar.com/features/the-anatomy-of-a-dropper-post/");

    /// <summary>Post modernism.</summary>
    public static Source PostModernism { get; } = new("POST-MODERNISM", SourceKind.Press, Confidence.Medium, "Post modernism", "Seven Day Cyclist", "n.d.", "www.sevendaycyclist.com/post-modernism");

    /// <summary>What is the seatpost collar?.</summary>
    public static Source CollarPage { get; } = new("COLLAR-PAGE", SourceKind.Community, Confidence.Medium, "What is the seatpost collar?", "bikehike.org (repeats Wikipedia, Seatpost)", "n.d.", "bikehike.org/?p=214903");

    /// <summary>Clamps.</summary>
    public static Source ClampShop { get; } = new("CLAMP-SHOP", SourceKind.MakerDocument, Confidence.Medium, "Clamps", "Compulsion Cycles", "n.d.", "www.compulsioncycles.com/product-category/clamps/");

    /// <summary>16 CFR 1512.15 Requirements for seat.</summary>
    public static Source SeatRegulation { get; } = new("SEAT-REGULATION", SourceKind.Standard, Confidence.High, "16 CFR 1512.15 Requirements for seat", "US Code of Federal Regulations", "rev. 2007, amended 2011", "edocket.access.gpo.gov/cfr_2007/janqtr/16cfr1512.15.htm");

    /// <summary>Operation Manual 2015, pp. 94-95.</summary>
    public static Source FrameManual { get; } = new("FRAME-MANUAL", SourceKind.MakerDocument, Confidence.Medium, "Operation Manual 2015, pp. 94-95", "GT Bicycles", "2015", "");

    /// <summary>Vintage French seatpost sizes.</summary>
    public static Source FrenchPosts { get; } = new("FRENCH-POSTS", SourceKind.Community, Confidence.Medium, "Vintage French seatpost sizes", "thevelocollective.com", "undated", "thevelocollective.com/vintage-french-seatpost-sizes/");

    /// <summary>Seatpost feature.</summary>
    public static Source RoadPostFeature { get; } = new("ROAD-POST-FEATURE", SourceKind.Press, Confidence.Low, "Seatpost feature", "RoadCyclingUK", "undated", "roadcyclinguk.com/tech/tech-features/thomson-elite-seatpost.html");

    /// <summary>Is there a standard for seat pillar thickness? (in Japanese).</summary>
    public static Source FoldingPosts { get; } = new("FOLDING-POSTS", SourceKind.Community, Confidence.Medium, "Is there a standard for seat pillar thickness? (in Japanese)", "Hakusen Hatogaya (shop blog)", "2017", "hakusen-hatogaya.lekumo.biz/blog/2017/09/post-a844.html");

    /// <summary>Standardized Headset Identification System (repost of the announcement).</summary>
    public static Source HeadsetCodes { get; } = new("HEADSET-CODES", SourceKind.Community, Confidence.Medium, "Standardized Headset Identification System (repost of the announcement)", "BikeRadar forum", "2011", "forum.bikeradar.com/viewtopic.php?f=40073&t=12758049&p=16768913");

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
        PostSizes, PostSizesCanada, DropperAnatomy, PostModernism, CollarPage, ClampShop,
        SeatRegulation, FrameManual, FrenchPosts, RoadPostFeature, FoldingPosts,
        HeadsetCodes,
    ];
}
