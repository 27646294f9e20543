using UnitsNet;

namespace Lugwork.PublishedTables;

/// <summary>Loads and uses against what makers and standards print of them.</summary>
public sealed class RiderChecks
{
    private const string Conditions = "ASTM F2043-00 Standard Classification for Bicycle Usage (sample page); iTeh / ASTM";
    private const string Categories = "Wheel manual, page 57: intended use by ASTM F2043 categories; DT Swiss (manual library copy)";
    private const string Mountain = "Mountain bike user manual: intended use; Canyon (manual library copy)";
    private const string Luggage = "Bicycle manual, appendix A: maximum weight limit; Focus (manual library copy)";
    private const string Fork = "Fork owner's manual: structural and braking weight limits; Specialized (document copy)";
    private const string Laden = "How is the max load in the bike specifications defined; Bicycles Stack Exchange";
    private const string Limits = "TBIS 15194:2019, page 124: what the instructions say; Taiwan Bicycle Association";
    private const string Practice = "common practice, no source";

    [Theory]
    [InlineData("245 lb", 55, Verdict.Fits, Fork)]
    [InlineData("255 lb", 20, Verdict.Fits, Fork)]
    [InlineData("255 lb", 55, Verdict.Unsafe, Fork)]
    [InlineData("290 lb", 10, Verdict.Fits, Fork)]
    [InlineData("310 lb", 0, Verdict.Unsafe, Fork)]
    public void Rider_and_cargo_stay_below_300_pounds_as_worked_out(string rider, int cargo, Verdict expected, string source)
    {
        Load alone = Load.Parse(rider, null);
        Load whole = Load.Of(alone.Mass + Mass.FromPounds(cargo));
        string limit = Published.Key<Load>("300 lb", source);
        Build build = Build.From(Frame.Read($"load limit {limit}; system limit none")).With(Rider.Read($"{alone}; with luggage {whole}"));
        Published.Says(build.With(Lugwork.Fork.Read($"load limit {limit}; system limit none")), "rider-on-fork", source, expected);
        Published.Says(build, "rider-on-frame", source, expected);
    }

    [Theory]
    [InlineData("300 lb", "136", "5 lb", "2.3", "305 lb", "138", Luggage)]
    [InlineData("300 lb", "136", "55 lb", "25", "355 lb", "161", Luggage)]
    public void Pounds_and_kilograms_are_printed_side_by_side(string rider, string riderKilograms, string luggage, string luggageKilograms, string total, string totalKilograms, string source)
    {
        Assert.True(Beside(rider, riderKilograms) && Beside(luggage, luggageKilograms) && Beside(total, totalKilograms), source);
        string limit = Published.Key<Load>(total, source);
        Build frame = Build.From(Frame.Read($"load limit {limit}; system limit none"));
        Mass most = Mass.FromPounds(Pounds(rider) + Pounds(luggage));
        Published.Says(frame.With(Rider.Read($"{rider}; with luggage {Load.Of(most)}")), "rider-on-frame", source, Verdict.Fits);
        Published.Says(frame.With(Rider.Read($"{rider}; with luggage {Load.Of(most + Mass.FromPounds(1))}")), "rider-on-frame", source, Verdict.Unsafe);
    }

    [Theory]
    [InlineData("120 kg", "", Verdict.Fits, Mountain)]
    [InlineData("120.1 kg", "", Verdict.Unsafe, Mountain)]
    [InlineData("115 kg", "110 kg", Verdict.Unsafe, Mountain)]
    public void Rider_and_baggage_stay_within_120_kg_and_a_component_may_allow_less(string rider, string component, Verdict expected, string source)
    {
        string limit = Published.Key<Load>(component.Length > 0 ? component : "120 kg", source);
        Build build = Build.From(Frame.Read("load limit 120 kg; system limit none")).With(Rider.Read($"{rider}; with luggage none"))
            .With(Wheel.Read($"load limit {limit}; system limit none"), Slot.FrontWheel)
            .With(Wheel.Read($"load limit {limit}; system limit none"), Slot.RearWheel)
            .With(Stem.Read($"rider limit {limit}; system limit none"))
            .With(Handlebar.Read($"rider limit {limit}; system limit none"))
            .With(Seatpost.Read($"rider limit {limit}; system limit none"));
        foreach (string joint in new[] { "rider-on-front-wheel", "rider-on-rear-wheel", "rider-on-stem", "rider-on-handlebar", "rider-on-seatpost" })
        {
            Published.Says(build, joint, source, expected);
        }

        Published.Says(build, "rider-on-frame", source, component.Length > 0 ? Verdict.Fits : expected);
    }

    [Theory]
    [InlineData("118 kg", "129.6 kg", Verdict.Fits, Laden)]
    [InlineData("118.4 kg", "130 kg", Verdict.Fits, Laden)]
    [InlineData("119 kg", "130.6 kg", Verdict.Unsafe, Laden)]
    public void A_laden_weight_counts_the_bicycle_of_11_6_kg_too(string rider, string everything, Verdict expected, string source)
    {
        string limit = Published.Key<Load>("130 kg", source);
        Published.Says(Build.From(Frame.Read($"load limit none; system limit {limit}")).With(Rider.Read($"{rider}; with luggage none; system {everything}")), "rider-on-frame", source, expected);
    }

    [Theory]
    [InlineData("rider and luggage alone", "load limit 100 kg; system limit 200 kg", Verdict.Unsafe, Limits)]
    [InlineData("the whole alone", "load limit 200 kg; system limit 100 kg", Verdict.Unsafe, Limits)]
    [InlineData("both kept", "load limit 110 kg; system limit 130 kg", Verdict.Fits, Limits)]
    [InlineData("neither printed", "load limit none; system limit none", Verdict.NeedsMeasuring, Practice)]
    public void Rider_with_luggage_and_the_whole_have_a_limit_each(string row, string limits, Verdict expected, string source) =>
        Published.Says(Build.From(Frame.Read(limits)).With(Rider.Read("90 kg; with luggage 110 kg; system 125 kg")), "rider-on-frame", $"{row}, {source}", expected);

    [Theory]
    [InlineData("category 2", "category 1", Verdict.Fits, Categories)]
    [InlineData("category 3", "category 1", Verdict.Fits, Categories)]
    [InlineData("category 3", "category 2", Verdict.Fits, Categories)]
    [InlineData("category 4", "category 1", Verdict.Fits, Categories)]
    [InlineData("category 4", "category 2", Verdict.Fits, Categories)]
    [InlineData("category 4", "category 3", Verdict.Fits, Categories)]
    [InlineData("category 5", "category 1", Verdict.Fits, Categories)]
    [InlineData("category 5", "category 2", Verdict.Fits, Categories)]
    [InlineData("category 5", "category 3", Verdict.Fits, Categories)]
    [InlineData("category 5", "category 4", Verdict.Fits, Categories)]
    [InlineData("condition 2", "condition 1", Verdict.Fits, Conditions)]
    [InlineData("condition 3", "condition 1", Verdict.Fits, Conditions)]
    [InlineData("condition 3", "condition 2", Verdict.Fits, Conditions)]
    [InlineData("condition 4", "condition 3", Verdict.Fits, Luggage)]
    [InlineData("condition 1", "condition 2", Verdict.Unsafe, Mountain)]
    [InlineData("condition 2", "condition 3", Verdict.Unsafe, Mountain)]
    public void A_category_takes_in_those_that_the_source_names(string made, string use, Verdict expected, string source)
    {
        string part = "use " + Published.Key<UseCategory>(made, source);
        Build build = Build.From(Frame.Read(part)).With(Rider.Read("use " + Published.Key<UseCategory>(use, source)))
            .With(Lugwork.Fork.Read(part)).With(Stem.Read(part)).With(Handlebar.Read(part)).With(Seatpost.Read(part))
            .With(Wheel.Read(part), Slot.FrontWheel).With(Wheel.Read(part), Slot.RearWheel);
        foreach (string slot in new[] { "frame", "fork", "front-wheel", "rear-wheel", "stem", "handlebar", "seatpost" })
        {
            Published.Says(build, "use-of-" + slot, source, expected);
        }
    }

    [Theory]
    [InlineData("category 2", 15, Categories)]
    [InlineData("category 3", 61, Categories)]
    [InlineData("category 4", 122, Categories)]
    public void A_category_ends_at_the_printed_drop(string category, int centimetres, string source) =>
        Assert.True(Math.Abs(UseCategory.Parse(category, null).GreatestDrop!.Value.Centimeters - centimetres) < 1e-9, source);

    private static int Pounds(string text) => int.Parse(text.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The printed kilograms are the pounds, rounded as printed.</summary>
    private static bool Beside(string pounds, string kilograms)
    {
        int places = kilograms.Contains('.', StringComparison.Ordinal) ? 1 : 0;
        return decimal.Round(Load.Parse(pounds, null).Kilograms, places) == decimal.Parse(kilograms, System.Globalization.CultureInfo.InvariantCulture);
    }
}
