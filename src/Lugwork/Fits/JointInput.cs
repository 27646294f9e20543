using System.Collections.Immutable;

namespace Lugwork;

/// <summary>
/// One input of a joint: an interface of the part in a slot. It is one object, and what it can be is listed when that is first asked for: a joint of which
/// all is known is judged without.
/// </summary>
internal abstract class JointInput
{
    // Listed when first asked for. Two threads at once list the same.
    private ImmutableArray<long> _domain;

    protected JointInput(Slot slot, string field, string called, string measure)
    {
        Slot = slot;
        Field = field;
        Called = called;
        Measure = measure;
    }

    public Slot Slot { get; }

    /// <summary>Field of the part, for a front end: "seatTube".</summary>
    public string Field { get; }

    /// <summary>What it is called on that part: "seat tube bore".</summary>
    public string Called { get; }

    /// <summary>Where, with what and how exactly to measure or ask.</summary>
    public string Measure { get; }

    /// <summary>Every code of a closed set, or the nominal sizes; empty for a plain length.</summary>
    public ImmutableArray<long> Domain
    {
        get
        {
            if (_domain.IsDefault)
            {
                _domain = List();
            }

            return _domain;
        }
    }

    /// <summary>Lengths and open sizes compare with each other across inputs of one family; 0 for a closed set of its own.</summary>
    public int Family { get; init; }

    /// <summary>A plain quantity, a length, a mass or an angle: it has no list and changes a verdict only where it meets another figure.</summary>
    public bool IsLength { get; init; }

    /// <summary>What stands behind a plain length that is told: millimetres, or pitches of a chain.</summary>
    public string Unit { get; init; } = " mm";

    /// <summary>The plain quantity is a mass: its codes are grams.</summary>
    public bool IsMass { get; init; }

    /// <summary>The plain quantity is an angle: its codes are microdegrees.</summary>
    public bool IsAngle { get; init; }

    /// <summary>It is read on the finished bicycle, and none where nobody did: no part is chosen by it.</summary>
    public bool IsReadWhenBuilt { get; init; }

    public abstract Candidates Read(Part part);

    /// <summary>Something is stated; an input that reads "not stated" as an answer of its own says so by itself.</summary>
    public virtual bool IsStated(Part part) => Read(part).State != KnownState.Unknown;

    public abstract string Show(long code);

    /// <summary>The value in the words of the trade.</summary>
    public virtual string Tell(long code) => Show(code);

    /// <summary>Which figure of the field is read, where it is not the field as it stands: a size has a bead seat and a width.</summary>
    public virtual string Figure => "";

    public abstract string ShowKnown(Part part);

    public abstract Evidence? Evidence(Part part);

    /// <summary>What the row of the part's one known value rests on; null where there is no such row.</summary>
    public abstract Source? RestsOn(Part part);

    protected abstract ImmutableArray<long> List();
}
