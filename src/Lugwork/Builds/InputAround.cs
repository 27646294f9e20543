using System.Collections.Immutable;

namespace Lugwork;

/// <summary>Another input, of which something is read otherwise: what it is called and how it is told stays.</summary>
internal abstract class InputAround : JointInput
{
    /// <param name="piece">The other.</param>
    /// <param name="isFigure">The same figure is read, so that each mark of it stays.</param>
    protected InputAround(JointInput piece, bool isFigure)
        : base(piece.Slot, piece.Field, piece.Called, piece.Measure)
    {
        Piece = piece;
        if (isFigure)
        {
            (Family, IsLength, Unit, IsMass, IsAngle, IsReadWhenBuilt) = (piece.Family, piece.IsLength, piece.Unit, piece.IsMass, piece.IsAngle, piece.IsReadWhenBuilt);
        }
    }

    protected JointInput Piece { get; }

    public override string Show(long code) => Piece.Show(code);

    public override string Tell(long code) => Piece.Tell(code);

    public override string Figure => Piece.Figure;

    public override string ShowKnown(Part part) => Piece.ShowKnown(part);

    public override Evidence? Evidence(Part part) => Piece.Evidence(part);

    public override Source? RestsOn(Part part) => Piece.RestsOn(part);

    protected override ImmutableArray<long> List() => Piece.Domain;
}

/// <summary>A piece that is there or not: one that nobody states is not there, and has to be bought.</summary>
internal sealed class PieceThere(JointInput piece) : InputAround(piece, isFigure: false)
{
    public override Candidates Read(Part part) =>
        Piece.Read(part) is { State: not KnownState.Unknown } stated ? stated : new Candidates(KnownState.Value, Brakes.DiscRelations.NotThere, Brakes.DiscRelations.NotThere, null);

    public override string Show(long code) => code == Brakes.DiscRelations.NotThere ? "none" : Piece.Show(code);

    public override string Tell(long code) => code == Brakes.DiscRelations.NotThere ? "none" : Piece.Tell(code);

    public override string ShowKnown(Part part) => Piece.Read(part).State == KnownState.Unknown ? "not stated" : Piece.ShowKnown(part);

    protected override ImmutableArray<long> List() => [Brakes.DiscRelations.NotThere];
}

/// <summary>A figure that only sharpens a sum: none where it is not known, or where it does not count, and then not asked for.</summary>
internal sealed class FigureIfKnown : InputAround
{
    private readonly Func<Part, bool>? _counts;

    public FigureIfKnown(JointInput piece, Func<Part, bool>? counts)
        : base(piece, isFigure: true) => _counts = counts;

    public override Candidates Read(Part part) =>
        Piece.Read(part) is { State: not KnownState.Unknown } known && _counts?.Invoke(part) != false ? known : new Candidates(KnownState.None, 0, 0, null);

    public override bool IsStated(Part part) => Piece.Read(part).State is not (KnownState.Unknown or KnownState.None);
}

/// <summary>A length that every part of the kind has: one that is stated as none is as little known as one of which nothing is said.</summary>
internal sealed class LengthOfEvery(JointInput piece) : InputAround(piece, isFigure: true)
{
    public override Candidates Read(Part part) => Piece.Read(part) is { State: not KnownState.None } said ? said : default;

    public override bool IsStated(Part part) => Piece.Read(part).State is not (KnownState.Unknown or KnownState.None);
}

/// <summary>A mark that has not to be read where the answer is known without it.</summary>
internal sealed class MarkWhereNeeded : InputAround
{
    private readonly Func<Part, bool> _isIdle;

    public MarkWhereNeeded(JointInput mark, Func<Part, bool> isIdle)
        : base(mark, isFigure: true) => _isIdle = isIdle;

    public override Candidates Read(Part part) => Piece.Read(part) is { State: KnownState.Unknown } && _isIdle(part) ? new Candidates(KnownState.None, 0, 0, null) : Piece.Read(part);

    public override bool IsStated(Part part) => Piece.Read(part).State != KnownState.Unknown || _isIdle(part);
}
