using System.Globalization;
using System.Text.RegularExpressions;

namespace Lugwork.Tests.Builds;

/// <summary>A need in short: one line that can be read, the limits first, and what is left out is counted.</summary>
public sealed partial class NeedTextTests
{
    private static Frame Touring { get; } = Frame.Read("rear 12x142; seat tube 27.2; shell BSA 68; head tube EC34/EC34; rear brake IS");

    [Fact]
    public void What_keeps_parts_out_stands_first()
    {
        string bracket = Build.From(Touring).Needs().Of(Slot.BottomBracket)!.ToString();
        Assert.StartsWith("bottom bracket: shell that the bottom bracket is made for BSA threaded; narrowest shell at most 68 mm; widest shell at least 68 mm; shell that ", bracket, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_is_there_is_named_so() =>
        Assert.StartsWith("seatpost (there is one): seatpost diameter 27.2, with a shim or adapter 25, 25.4, 26, 26.8; ", Build.From(Touring).With(Seatpost.Read("26.8 x 350")).Needs().Of(Slot.Seatpost)!.ToString(), StringComparison.Ordinal);

    /// <summary>Values that ask for a look are not said to be right, nor left out in silence.</summary>
    [Fact]
    public void What_is_to_be_checked_is_told_apart()
    {
        Need fork = Build.From(Touring).Needs().Of(Slot.Fork)!;
        Assert.Contains("steerer 28.6, to be checked 23.8, 25, 25.4; ", fork.ToString(), StringComparison.Ordinal);
        string bracket = Build.From(Touring).Needs().Of(Slot.BottomBracket)!.ToString();
        Assert.DoesNotContain("Italian", bracket, StringComparison.Ordinal);
    }

    /// <summary>Beside a hanger that holds no derailleur nothing goes, and that is what has to be read first.</summary>
    [Fact]
    public void What_nothing_suits_stands_before_all_else()
    {
        Need derailleur = Build.From(Frame.Read("hanger none")).Needs().Of(Slot.RearDerailleur)!;
        Assert.Contains("derailleur mount none known fits", derailleur.Rows);
        Assert.StartsWith("rear derailleur: derailleur mount none known fits; ", derailleur.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Where all but one size are refused, and that one has to be checked, the size is named: "more to be checked" would let in the others.</summary>
    [Fact]
    public void The_only_size_is_named_though_it_has_to_be_checked()
    {
        foreach (Build whole in Numbers.Select(n => WholeBuilds.Load((string)n)))
        {
            Assert.All(whole.Needs().SelectMany(n => n.Lines), l => Assert.False(l.InShort().Contains("more to be checked", StringComparison.Ordinal) && l.Accepted.IsEmpty && l.WithBridge.IsEmpty, l.ToString()));
        }
    }

    [Fact]
    public void A_chain_is_counted_in_pitches()
    {
        Need chain = WholeBuilds.Load("01").Needs().Of(Slot.Chain)!;
        Assert.Contains(chain.Rows, r => r.Contains(" pitches", StringComparison.Ordinal));
        Assert.DoesNotContain(chain.Rows, r => r.StartsWith("length of the chain at", StringComparison.Ordinal) && r.Contains(" mm", StringComparison.Ordinal));
    }

    [Fact]
    public void How_to_measure_is_left_to_the_rows()
    {
        Need post = Build.From(Frame.Read("seat tube unknown")).Needs().Of(Slot.Seatpost)!;
        Assert.Contains("seatpost diameter: measure the seat tube bore first", post.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("caliper", post.ToString(), StringComparison.Ordinal);
    }

    public static TheoryData<string> Numbers => [.. Enumerable.Range(1, 30).Select(n => n.ToString("00", CultureInfo.InvariantCulture))];

    /// <summary>Of each whole bicycle and of its bare frame: short, on one line, and with each line told or counted.</summary>
    [Theory]
    [MemberData(nameof(Numbers))]
    public void Each_need_is_short_and_counts_what_it_leaves_out(string number)
    {
        Build whole = WholeBuilds.Load(number);
        foreach (Need need in whole.Needs().Concat(Build.From(whole.Frame).Needs()))
        {
            string text = need.ToString();
            Assert.DoesNotContain('\n', text);
            Assert.InRange(text.Length, 1, 550);
            string[] parts = text[(text.IndexOf(": ", StringComparison.Ordinal) + 2)..].Split("; ");
            int more = CountOfMore().Match(parts[^1]) is { Success: true } match ? int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) : 0;
            int told = parts.Count(p => !p.StartsWith("goes by ", StringComparison.Ordinal) && !CountOfMore().IsMatch(p));
            Assert.Equal(need.Lines.Count(l => l.Follows.IsEmpty && !l.IsCovered), told + more);
            Assert.All(need.Lines.SelectMany(l => l.Follows).Distinct().Take(1), s => Assert.Contains($"goes by the {s.Name}", text, StringComparison.Ordinal));
        }
    }

    [GeneratedRegex("^and ([0-9]+) more$")]
    private static partial Regex CountOfMore();
}
