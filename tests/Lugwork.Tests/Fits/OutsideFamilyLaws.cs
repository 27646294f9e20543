using System.Reflection;
using Lugwork.Tests.Architecture;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Fits;

/// <summary>What holds for every name of a family outside the library, in every field of every part.</summary>
public sealed class OutsideFamilyLaws
{
    public static TheoryData<string> Families => [.. OutsideFamily.All.Select(f => f.FitKey)];

    public static TheoryData<string> ValueTypes => [.. Values.InterfaceTypes.Where(t => t != typeof(OutsideFamily)).Select(t => t.FullName!)];

    private static IEnumerable<string> Spellings(OutsideFamily family) =>
        family.Names.Prepend(family.TradeName).Prepend(family.FitKey).SelectMany(n => new[] { n, n.ToUpperInvariant(), $" {n} part ", n.Replace(' ', '-') });

    [Theory]
    [MemberData(nameof(Families))]
    public void A_name_in_any_field_is_its_state_and_never_a_refusal_an_unknown_or_a_fit(string key)
    {
        OutsideFamily family = OutsideFamily.Parse(key, null);
        int judged = 0;
        foreach ((Slot slot, IPartField field) in SchemaBench.Fields)
        {
            IPartForm form = PartForms.Of(slot);
            string[] set = field.Sets.IsEmpty ? [field.Key] : [.. field.Sets];
            foreach (string text in field.Key == "size" && slot == Slot.Seatpost ? [] : Spellings(family))
            {
                List<SpecProblem> problems = [];
                Part part = form.ReadProperties([new(field.Key, text)], "", problems);
                Assert.True(problems.Count == 0, $"{slot}.{field.Key} \"{text}\": {string.Join(' ', problems)}");
                Dictionary<string, string> written = form.Write(part).ToDictionary();
                Assert.All(set, k => Assert.Equal(family.FitKey, written[k]));
                Assert.Equal(set.Length, written.Count);
                judged++;
            }

            if (set.All(k => form.Fields.Any(f => f.Key == k)) && !(field.Key == "size" && slot == Slot.Seatpost))
            {
                Build whole = Bench.WholeBicycle();
                Dictionary<string, string> kept = form.Write(whole[slot]!).Where(p => !set.Contains(p.Key)).ToDictionary();
                List<SpecProblem> problems = [];
                Part part = form.ReadProperties(kept.Concat(set.Select(k => new KeyValuePair<string, string>(k, family.TradeName))), "", problems);
                Assert.Empty(problems);
                FitReport report = (slot == Slot.Frame ? Others(whole, (Frame)part) : whole.With(part, slot)).Check();
                Assert.True(report.Verdict == Verdict.NeedsMeasuring, $"{slot}.{field.Key} {key}: {report}");
                Assert.All(report.Findings.Where(f => f.Joint!.Inputs.Any(i => i.Slot == slot && set.Contains(i.Field))), f => Assert.True(
                    f.Verdict == Verdict.NeedsMeasuring && f.Sentence.Contains(family.TradeName, StringComparison.Ordinal) && f.Remedies.IsEmpty, f.ToString()));
            }
        }

        Assert.True(judged > 400, $"{judged}");
    }


    [Theory]
    [MemberData(nameof(ValueTypes))]
    public void No_name_of_a_family_reads_as_an_interface_value(string type) => Values.Check(GetType(), nameof(ReadsNone), type);

    private static void ReadsNone<T>()
        where T : IInterfaceValue<T>
    {
        foreach (string text in OutsideFamily.All.SelectMany(Spellings))
        {
            Assert.True(T.Read(text).Values.IsEmpty, $"{T.Called} reads \"{text}\"");
        }
    }

    [Theory]
    [MemberData(nameof(ValueTypes))]
    public void No_spelling_of_a_value_is_a_family(string type) => Values.Check(GetType(), nameof(IsNone), type);

    private static void IsNone<T>()
        where T : IInterfaceValue<T>
    {
        foreach (T value in T.All)
        {
            foreach (string text in new[] { value.FitKey, value.ToString("T", null) }.Concat(value.GetType().GetProperty("Names", BindingFlags.Public | BindingFlags.Instance)?.GetValue(value) is IEnumerable<string> names ? names : []))
            {
                Assert.True(OutsideText.Read(text) is null, $"{T.Called} \"{text}\" is taken for a family");
            }
        }
    }

    [Fact]
    public void Names_have_no_figure_and_stand_for_one_family_only()
    {
        string[] names = [.. OutsideFamily.All.SelectMany(f => f.Names.Prepend(f.TradeName).Prepend(f.FitKey).Select(Bare).Distinct())];
        Assert.Equal(names.Length, names.Distinct().Count());
        Assert.All(names, n => Assert.DoesNotContain(n, char.IsAsciiDigit));
        Assert.All(OutsideFamily.All, f => Assert.True(f.State.IsOutside()));
        Assert.All(OutsideFamily.All.SelectMany(f => f.Homes), h => Assert.Contains(SchemaBench.Fields, f => f.Field.Key == h));
    }

    private static string Bare(string name) => new([.. name.ToUpperInvariant().Where(char.IsAsciiLetter)]);

    private static Build Others(Build build, Frame frame) =>
        Slot.All.Where(s => s != Slot.Frame && build[s] is not null).Aggregate(Build.From(frame), (b, s) => b.With(build[s]!, s));
}
