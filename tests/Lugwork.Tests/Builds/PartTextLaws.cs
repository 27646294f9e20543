using System.Collections.Immutable;
using Lugwork.Tests.Catalogues;

namespace Lugwork.Tests.Builds;

/// <summary>A part as one line of text.</summary>
public sealed class PartTextLaws
{
    public static TheoryData<string> Slots => [.. Slot.All.Select(s => s.Key)];

    [Theory]
    [MemberData(nameof(Slots))]
    public void What_is_written_of_a_part_reads_back_to_the_same_part(string key)
    {
        Slot slot = Slot.Find(key)!;
        Random random = new(11);
        int told = 0;
        for (int i = 0; i < 200; i++)
        {
            Part part = Shelves.Part(slot, random) with { Name = "a name; with, marks" };
            string text = PartText.Write(slot, part);
            told += text.Length > 0 ? 1 : 0;
            if (text.Length > 0)
            {
                Assert.Equal(part with { Name = "" }, PartText.Read(slot, text));
            }
        }

        Assert.True(told > 100, $"{told} of 200 say something");
    }

    [Fact]
    public void The_line_is_made_of_fields_and_keys() =>
        Assert.Equal("diameter 27.2; length 350", PartText.Write(Slot.Seatpost, Seatpost.Read("27,2 x 350")));

    [Fact]
    public void A_part_of_another_slot_is_refused()
    {
        Assert.Throws<ArgumentException>(() => PartText.Write(Slot.Fork, Seatpost.Read("27.2")));
        Assert.Throws<SpecException>(() => PartText.Read(Slot.Fork, "diameter 27.2"));
        Assert.False(PartText.TryRead(Slot.Seatpost, "diameter 27.2; wheel 3", out _, out ImmutableArray<SpecProblem> problems));
        Assert.Single(problems);
    }

    [Fact]
    public void Nothing_known_is_an_empty_line() => Assert.Equal("", PartText.Write(Slot.Saddle, new Saddle()));
}
