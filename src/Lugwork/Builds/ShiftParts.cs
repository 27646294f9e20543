using System.Collections.Immutable;
using Lugwork.Drivetrain;

namespace Lugwork;

/// <summary>A shifter, for the rear or the front.</summary>
public sealed record Shifter : Part
{
    /// <summary>What carries its shift: cable, wire, radio or fluid.</summary>
    public Known<ShiftSignal> Signal { get; init; }

    /// <summary>Family of its cable pull; none where it is none of the listed ones. Does not matter without a cable. Of a front shifter nothing reads it.</summary>
    public Known<ActuationFamily> Actuation { get; init; }

    /// <summary>The sprockets that its clicks are made for; none without clicks. Of a front shifter nothing reads it.</summary>
    public Known<SprocketSpacing> Spacing { get; init; }

    /// <summary>Housing from the shifter to its derailleur, all pieces together; no joint reads it.</summary>
    public Known<Dimension> HousingLength { get; init; }

    /// <summary>Whether its maker names it with this derailleur; none where the maker says nothing.</summary>
    public Known<MakersWord> WithDerailleur { get; init; }

    /// <summary>Whether its maker names it with these sprockets, or with this hub gear; none where the maker says nothing, and so where nothing is known. Of a front shifter nothing reads it.</summary>
    public Known<MakersWord> WithSprockets { get; init; }

    /// <summary>What the joints read: a word that nobody has looked up is no word.</summary>
    internal Known<MakersWord> WithSprocketsOrNothing => WithSprockets.State == KnownState.Unknown ? Known<MakersWord>.None : WithSprockets;

    private protected override ImmutableArray<Slot> GoesInto => [Slot.RearShifter, Slot.FrontShifter];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "cable; pull R11; spacing 11-wide; with derailleur allowed".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Shifter Read(string text) => PartForms.Shifter.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Shifter part, out ImmutableArray<SpecProblem> problems) => PartForms.Shifter.TryRead(text, out part, out problems);
}

/// <summary>A front derailleur.</summary>
public sealed record FrontDerailleur : Part
{
    /// <summary>How it is held.</summary>
    public Known<FrontDerailleurMount> Mount { get; init; }

    /// <summary>The speeds that its cage is made for.</summary>
    public Known<SprocketClass> Speeds { get; init; }

    /// <summary>The chainline that it is made for.</summary>
    public Known<FrontChainline> Chainline { get; init; }

    /// <summary>What moves it: cable, wire, radio or fluid.</summary>
    public Known<ShiftSignal> Signal { get; init; }

    /// <summary>Largest ring less the smallest that its maker allows; none where the maker prints none.</summary>
    public Known<ToothCount> Difference { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.FrontDerailleur];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "braze-on; speeds 11; chainline road-2x; cable".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static FrontDerailleur Read(string text) => PartForms.FrontDerailleur.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out FrontDerailleur part, out ImmutableArray<SpecProblem> problems) => PartForms.FrontDerailleur.TryRead(text, out part, out problems);
}

/// <summary>A chain guide.</summary>
public sealed record ChainGuide : Part
{
    /// <summary>How it is held.</summary>
    public Known<ChainGuideMount> Mount { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.ChainGuide];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "ISCG05".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static ChainGuide Read(string text) => PartForms.ChainGuide.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out ChainGuide part, out ImmutableArray<SpecProblem> problems) => PartForms.ChainGuide.TryRead(text, out part, out problems);
}

/// <summary>A ring that is bought apart from the crankset.</summary>
public sealed record Chainring : Part
{
    /// <summary>Its bolt circle; none for a ring that sits on the arm itself.</summary>
    public Known<BoltCircle> BoltCircle { get; init; }

    /// <summary>How it sits on the arm itself; none for a ring that is bolted to a spider.</summary>
    public Known<DirectMountRing> DirectMount { get; init; }

    /// <summary>Its teeth.</summary>
    public Known<ToothCount> Teeth { get; init; }

    /// <summary>The chain that its teeth are made for, by speeds.</summary>
    public Known<SprocketClass> Speeds { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Chainring];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "bolt circle 5x110; direct mount none; teeth 42".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Chainring Read(string text) => PartForms.Chainring.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Chainring part, out ImmutableArray<SpecProblem> problems) => PartForms.Chainring.TryRead(text, out part, out problems);
}
