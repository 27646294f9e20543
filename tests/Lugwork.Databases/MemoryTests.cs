using System.Globalization;

namespace Lugwork.Databases;

/// <summary>What a part takes of memory, measured where nothing else is.</summary>
public sealed class MemoryTests
{
    [Fact]
    public async Task A_part_like_others_takes_twenty_bytes_and_the_catalogue_says_what_is_held()
    {
        using OwnProcess process = OwnProcess.Start("bytes-held");
        string[] told = (await process.Said()).Split(' ');
        double held = double.Parse(told[0], CultureInfo.InvariantCulture);
        double said = double.Parse(told[1], CultureInfo.InvariantCulture);
        Assert.InRange(held / MemoryPart.Parts, 19.9, 20.5);
        Assert.InRange(said / held, 0.98, 1.02);
    }
}
