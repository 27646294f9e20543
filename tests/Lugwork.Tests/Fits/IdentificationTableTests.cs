namespace Lugwork.Tests.Fits;

/// <summary>What is measured next: things that a caliper, out by 0.1 mm, cannot tell apart stand together.</summary>
public sealed class IdentificationTableTests
{
    private static Identification<string> Told(decimal second) => new IdentificationTable<string>(
        [new("width", "across the faces"), new("bore", "inside")],
        [new("one", [(50m, 51m), (30m, 30m)]), new("other", [(50m, 51m), (second, second)])],
        v => v).Identify(MeasuredLength.OfMillimetres(50.5m));

    [Fact]
    public void Twice_the_error_apart_a_reading_between_may_be_either() => Assert.Equal("", Told(30.2m).Next);

    [Fact]
    public void Further_apart_the_bore_tells() => Assert.Equal("bore (inside): 30 mm is one; 30.21 mm is other", Told(30.21m).Next);

    [Fact]
    public void Both_are_candidates_in_the_order_of_the_table() => Assert.Equal(["one", "other"], Told(40m).Candidates.Select(c => c.Value));
}
