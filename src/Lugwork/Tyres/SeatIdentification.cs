using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>Bead seats by measuring; made when a rim is first identified.</summary>
internal static class SeatIdentification
{
    public static readonly IdentificationTable<BeadSeat> Rows = Make();

    private static IdentificationTable<BeadSeat> Make()
    {
        ImmutableArray<DimensionRow<BeadSeat>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<BeadSeat>>(BeadSeat.All.Length);
        foreach (BeadSeat seat in BeadSeat.All)
        {
            rows.Add(new(seat, RoundMeasure.Of(SpecifiedDiameter.Range(seat.FitCode)), TellsApart(seat.FitCode)));
        }

        return new(RoundMeasure.Dimensions, rows.MoveToImmutable(), s => s.FitKey);
    }

    /// <summary>Beside the number on rim or tyre, what parts close neighbours.</summary>
    private static string TellsApart(long seat) => seat switch
    {
        93 or 94 => "a tyre marked 7 x 1 3/4 is 93, one marked 8 x 2 or 200 x 50 is 94",
        251 or 252 or 254 => "the label: 14 1/2 x 2 1/4 is 251, the French 12 x 1 5/8 is 252 by one source, 14 x 1.75 is 254",
        335 or 337 or 340 or 349 => "all carry 16 x 1 3/8: only the ISO number tells them",
        355 or 357 => "a tyre marked 18 x 1.75 is 355",
        387 or 390 => "a tyre marked 450A is 390",
        438 or 440 => "both carry 500A: only the ISO number tells them",
        489 or 490 => "a tyre marked 550A is 490",
        498 or 501 => "only the ISO number tells them",
        531 or 534 => "a tyre marked 600 x 38B is 534",
        540 or 541 => "said to interchange; 541 is the French 600A",
        584 or 587 or 590 => "the label: 650B is 584, 700D is 587, 650A or 26 x 1 3/8 E.A.3 is 590",
        597 or 599 => "a fraction, 26 x 1 1/4 or 26 x 1 3/8 S-6, is 597; a decimal, 26 x 1.375, is 599",
        630 or 635 => "a tyre marked 27 is 630, one marked 28 x 1 1/2 or 700B is 635",
        642 or 647 => "a tyre marked 700A is 642, an old one marked 700 without a letter 647",
        _ => "",
    };
}
