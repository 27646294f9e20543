using System.Collections.Immutable;

namespace Lugwork;

/// <summary>An input that is a field of a part as it stands, with the values of its type.</summary>
internal class FieldInput<TPart, T> : JointInput
    where TPart : Part
    where T : IInterfaceValue<T>
{
    private readonly Func<TPart, Known<T>> _get;

    public FieldInput(Slot slot, string field, string called, Func<TPart, Known<T>> get, string measure)
        : base(slot, field, called, measure)
    {
        _get = get;
        IsLength = T.IsPlainLength;
    }

    /// <summary>The values that can be here, of a field that takes others too.</summary>
    public Func<T, bool>? Where { get; init; }

    /// <summary>Whether something is stated, where not stated is read as an answer of its own.</summary>
    public Func<Part, bool>? Stated { get; init; }

    public override Candidates Read(Part part) => Where is { } where ? Narrow(Known(part), where) : Known(part).ToCandidates();

    public override bool IsStated(Part part) => Stated is { } stated ? stated(part) : base.IsStated(part);

    public override string Show(long code) => T.OfFitCode(code).FitKey;

    public override string Tell(long code) => T.OfFitCode(code).ToString("T", null);

    public override string ShowKnown(Part part) => Known(part).InTradeWords();

    public override Evidence? Evidence(Part part) => Known(part).Evidence;

    public override Source? RestsOn(Part part) => Known(part).Row;

    protected Known<T> Known(Part part) => _get((TPart)part);

    protected override ImmutableArray<long> List() => JointInputs.CodesOf(Where);

    /// <summary>Of several readings those that can be at this end of the bicycle; all of them where none can.</summary>
    private static Candidates Narrow(Known<T> known, Func<T, bool> where)
    {
        if (known.State != KnownState.OneOf)
        {
            return known.ToCandidates();
        }

        ImmutableArray<T> here = ListedValues.Where(known.Values, where);
        return here.IsEmpty ? known.ToCandidates() : Known<T>.OneOf(here).ToCandidates();
    }
}

/// <summary>A field of which a figure is read that follows from it, such as the width of a tyre from its size.</summary>
internal sealed class FigureInput<TPart, T>(Slot slot, string field, string called, Func<TPart, Known<T>> get, Func<T, long> from, string measure) : FieldInput<TPart, T>(slot, field, called, get, measure)
    where TPart : Part
    where T : IInterfaceValue<T>
{
    /// <summary>Every figure that is read.</summary>
    public required Func<ImmutableArray<long>> Lists { get; init; }

    public Func<long, string>? Shows { get; init; }

    /// <summary>Told is the figure, as a length, and not the value that it follows from.</summary>
    public bool TellsLength { get; init; }

    public override Candidates Read(Part part) => Known(part).ToCandidates(from);

    public override string Show(long code) => Shows is { } shows ? shows(code) : Family == 0 ? Tyres.BeadSeat.OfFitCode(code).FitKey : new Nanometres(code).ToString();

    public override string Tell(long code) => Show(code);

    public override string Figure => Called;

    public override string ShowKnown(Part part) => TellsLength && Known(part).Values is { IsEmpty: false } values ? string.Join(" or ", values.Select(v => new Nanometres(from(v))).Distinct()) : base.ShowKnown(part);

    protected override ImmutableArray<long> List() => Lists();
}

/// <summary>A field that is read, shown or told in a way of its own.</summary>
internal sealed class OwnInput<TPart, T>(Slot slot, string field, string called, Func<TPart, Known<T>> get, string measure) : FieldInput<TPart, T>(slot, field, called, get, measure)
    where TPart : Part
    where T : IInterfaceValue<T>
{
    /// <summary>What is read, where it is not the field as it stands.</summary>
    public Func<TPart, Candidates>? Reads { get; init; }

    /// <summary>Every code that is read.</summary>
    public required Func<ImmutableArray<long>> Lists { get; init; }

    public Func<long, string>? Shows { get; init; }

    public Func<Known<T>, string>? Tells { get; init; }

    public override Candidates Read(Part part) => Reads is { } reads ? reads((TPart)part) : base.Read(part);

    public override string Show(long code) => Shows is { } shows ? shows(code) : base.Show(code);

    public override string Tell(long code) => Shows is { } shows ? shows(code) : base.Tell(code);

    public override string Figure => Shows is null ? "" : Called;

    public override string ShowKnown(Part part) => Tells is { } tells ? tells(Known(part)) : base.ShowKnown(part);

    protected override ImmutableArray<long> List() => Lists();
}

/// <summary>A field of which "none" is a value with a code and a word of its own.</summary>
internal sealed class OrNoneInput<TPart, T>(Slot slot, string field, string called, Func<TPart, Known<T>> get, long none, string word, string measure) : FieldInput<TPart, T>(slot, field, called, get, measure)
    where TPart : Part
    where T : IInterfaceValue<T>
{
    public override Candidates Read(Part part) => Known(part) is { State: not KnownState.None } known ? known.ToCandidates() : new Candidates(KnownState.Value, none, none, null);

    public override string Show(long code) => code == none ? word : base.Show(code);

    public override string Tell(long code) => code == none ? word : base.Tell(code);

    public override string ShowKnown(Part part) => Known(part) is { State: not KnownState.None } known ? known.InTradeWords() : word;

    protected override ImmutableArray<long> List() => [.. base.List(), none];
}
