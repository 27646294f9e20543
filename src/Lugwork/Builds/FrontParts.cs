using System.Collections.Immutable;
using Lugwork.Cockpit;
using Lugwork.Hubs;
using Lugwork.Steering;

namespace Lugwork;

/// <summary>A thru-axle.</summary>
public sealed record ThruAxle : Part
{
    /// <summary>Its thread.</summary>
    public Known<AxleThread> Thread { get; init; }

    /// <summary>Length from under the head to the tip.</summary>
    public Known<Dimension> Length { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.FrontThruAxle, Slot.RearThruAxle];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "M12x1.5".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static ThruAxle Read(string text) => PartForms.ThruAxle.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out ThruAxle part, out ImmutableArray<SpecProblem> problems) => PartForms.ThruAxle.TryRead(text, out part, out problems);
}

/// <summary>A headset, upper and lower half.</summary>
public sealed record Headset : Part
{
    /// <summary>Upper half: type and bore.</summary>
    public Known<HeadsetCup> UpperCup { get; init; }

    /// <summary>The steerer that the upper half is made for.</summary>
    public Known<SteererSize> Steerer { get; init; }

    /// <summary>Lower half: type and bore.</summary>
    public Known<HeadsetCup> LowerCup { get; init; }

    /// <summary>The crown-race seat that the lower half is made for.</summary>
    public Known<CrownRace> CrownRace { get; init; }

    /// <summary>Threaded or threadless.</summary>
    public Known<SteererKind> Kind { get; init; }

    /// <summary>How far the upper cup goes into the head tube; none for a half without a cup, as an integrated one is.</summary>
    public Known<Dimension> UpperSkirt { get; init; }

    /// <summary>How far the lower cup goes into the head tube; none for a half without a cup, as an integrated one is.</summary>
    public Known<Dimension> LowerSkirt { get; init; }

    /// <summary>The bearing that the upper half, or the frame's own seat, asks for.</summary>
    public Known<HeadsetBearing> UpperBearing { get; init; }

    /// <summary>The bearing that the lower half, or the frame's own seat, asks for.</summary>
    public Known<HeadsetBearing> LowerBearing { get; init; }

    internal Known<Dimension> UpperSkirtOrNone => SkirtOf(UpperSkirt, UpperCup);

    internal Known<Dimension> LowerSkirtOrNone => SkirtOf(LowerSkirt, LowerCup);

    /// <summary>An integrated half has no cup, so nothing goes in.</summary>
    private static Known<Dimension> SkirtOf(Known<Dimension> skirt, Known<HeadsetCup> cup) =>
        skirt.State == KnownState.Unknown && cup.Values is { IsEmpty: false } cups && cups.All(c => c.Style == HeadsetStyle.Integrated) ? Known<Dimension>.None : skirt;

    /// <summary>Height above the head tube, its cover counted.</summary>
    public Known<Dimension> UpperStack { get; init; }

    /// <summary>Height between the head tube and the seat of the crown race; none where the half stands inside.</summary>
    public Known<Dimension> LowerStack { get; init; }

    /// <summary>What is judged and planned by: "none" beside a cup that stands, or may stand, outside the head tube is a contradiction or settles nothing, so the height is asked for.</summary>
    internal Known<Dimension> LowerStackOrOpen =>
        LowerStack.State == KnownState.None && LowerCup.Values is { IsEmpty: false } cups && cups.Any(c => c.Style == HeadsetStyle.ExternalCup) ? default : LowerStack;

    /// <summary>What is judged and planned by: every upper half has a height, its cover counted, so that "none" says nothing of it.</summary>
    internal Known<Dimension> UpperStackOrOpen => UpperStack.State == KnownState.None ? default : UpperStack;

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Headset];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "upper ZS44/28.6; lower ZS56/40".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Headset Read(string text) => PartForms.Headset.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Headset part, out ImmutableArray<SpecProblem> problems) => PartForms.Headset.TryRead(text, out part, out problems);
}

/// <summary>A stem.</summary>
public sealed record Stem : Part
{
    /// <summary>How it is held: steerer clamp or quill.</summary>
    public Known<StemFixing> Fixing { get; init; }

    /// <summary>What it is made of.</summary>
    public Known<Material> Material { get; init; }

    /// <summary>The diameter of bar that it clamps.</summary>
    public Known<BarClamp> BarClamp { get; init; }

    /// <summary>Insertion mark of a quill, from its lower end; none where there is no mark. Does not matter for a clamp.</summary>
    public Known<Dimension> Mark { get; init; }

    /// <summary>How deep the quill sits in the steerer. Does not matter for a clamp.</summary>
    public Known<Dimension> Insertion { get; init; }

    /// <summary>The most that the rider may weigh by its maker; none where the maker prints no figure, which is unknown, not unlimited.</summary>
    public Known<Load> RiderLimit { get; init; }

    /// <summary>The most that rider, luggage and bicycle may weigh by its maker; none where the maker prints no figure.</summary>
    public Known<Load> SystemLimit { get; init; }

    /// <summary>The riding that its maker allows; none where the maker names no category, which is unknown, not unlimited.</summary>
    public Known<UseCategory> Use { get; init; }

    /// <summary>Height of the clamp along the steerer.</summary>
    public Known<Dimension> ClampHeight { get; init; }

    /// <summary>Height of all spacers between headset and stem; none without.</summary>
    public Known<Dimension> SpacersBelow { get; init; }

    /// <summary>Height of all spacers between stem and cap; none without.</summary>
    public Known<Dimension> SpacersAbove { get; init; }

    /// <summary>When it was made. No joint reads it; <see cref="Build.ToInspect"/> tells it.</summary>
    public Known<DateMade> Made { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Stem];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "28.6 clamp; bar 31.8".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Stem Read(string text) => PartForms.Stem.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Stem part, out ImmutableArray<SpecProblem> problems) => PartForms.Stem.TryRead(text, out part, out problems);
}

/// <summary>A handlebar.</summary>
public sealed record Handlebar : Part
{
    /// <summary>Its diameter at the stem.</summary>
    public Known<BarClamp> Clamp { get; init; }

    /// <summary>What it is made of.</summary>
    public Known<Material> Material { get; init; }

    /// <summary>From end to end; no joint reads it.</summary>
    public Known<Dimension> Width { get; init; }

    /// <summary>Its diameter where hands and controls go.</summary>
    public Known<GripDiameter> Grip { get; init; }

    /// <summary>The most that the rider may weigh by its maker; none where the maker prints no figure, which is unknown, not unlimited.</summary>
    public Known<Load> RiderLimit { get; init; }

    /// <summary>The most that rider, luggage and bicycle may weigh by its maker; none where the maker prints no figure.</summary>
    public Known<Load> SystemLimit { get; init; }

    /// <summary>The riding that its maker allows; none where the maker names no category, which is unknown, not unlimited.</summary>
    public Known<UseCategory> Use { get; init; }

    /// <summary>When it was made. No joint reads it; <see cref="Build.ToInspect"/> tells it.</summary>
    public Known<DateMade> Made { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Handlebar];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "31.8".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Handlebar Read(string text) => PartForms.Handlebar.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Handlebar part, out ImmutableArray<SpecProblem> problems) => PartForms.Handlebar.TryRead(text, out part, out problems);
}
