using System.Globalization;
using System.Text.Json;
using Microsoft.Data.Sqlite;

namespace Lugwork.Browser;

/// <summary>
/// Beside a cart with parts in it every list of every slot is held against the check of each different part: the tables are read here, the
/// parts put into a build one by one, and nothing of the shop's code or of the relation is used.
/// </summary>
public sealed class CartTests(Shop shop)
{
    private static Task<List<(long Spec, Slot Slot, Part Part, long[] Articles)>>? _stock;

    private static readonly (string List, string Count, Verdict Verdict)[] Lists =
        [("Fits", "fits", Verdict.Fits), ("NeedsPart", "needsPart", Verdict.NeedsPart), ("NeedsMeasuring", "needsMeasuring", Verdict.NeedsMeasuring), ("NotJudged", "notJudged", Verdict.NotJudged)];

    public static TheoryData<string, string> Carts => new()
    {
        // What meets is two parts, not part and frame.
        { Shop.Frame, "rearWheel Rear wheel 622, R142-12, HG-L; rearTyre Tyre 40-622; rearRotor Rotor 160; cassette Cassette HG-11" },
        { Shop.Frame, "fork Fork, carbon, 12 mm axle, 50 mm; headset Headset IS42/28.6 over IS52/40; stem Stem; frontWheel Front wheel 622, F100-12" },

        // Frames that are several at once, or of which only the maker knows.
        { "kind gravel; rear R142-12 | R135-QR; seatTube 27.2 | 31.6; shell BSA-68 | BB86; largestRearTyre 42-622 | 50-622", "seatpost Seatpost 27.2; rearTyre Tyre 40-622; frontRotor Rotor 140" },
        { "kind city; rear R135-QR; seatTube frame-specific; shell BSA-68; rearBrake none; rearBosses cantilever-622; largestRearTyre unknown", "rearRimBrake Rim brake; crankset Crankset; seatpost Seatpost 27.2" },
    };

    [Theory]
    [MemberData(nameof(Carts))]
    public async Task Every_list_holds_what_the_check_says_of_each_part(string frame, string wanted)
    {
        (Build build, string parts) = await Filled(frame, wanted);
        List<(long Spec, Slot Slot, Part Part, long[] Articles)> stock = await (_stock ??= Stock());
        string cart = $"frame={Uri.EscapeDataString(frame)}{parts}";
        int listed = 0;
        foreach (IGrouping<Slot, (long Spec, Slot Slot, Part Part, long[] Articles)> shelf in stock.GroupBy(s => s.Slot).Where(s => s.Key != Slot.Frame))
        {
            Dictionary<Verdict, HashSet<long>> expected = [];
            foreach ((_, Slot slot, Part part, long[] articles) in shelf)
            {
                Verdict verdict = Plain(build.With(part, slot).Check(), slot);
                (expected.TryGetValue(verdict, out HashSet<long>? of) ? of : expected[verdict] = []).UnionWith(articles);
            }

            JsonElement counts = (await shop.Json($"/api/parts/{shelf.Key.Key}?{cart}&size=1")).GetProperty("counts");
            Assert.Equal(expected.Where(e => e.Key > Verdict.NeedsMeasuring).Sum(e => e.Value.Count), counts.GetProperty("doNotFit").GetInt32());
            foreach ((string list, string count, Verdict verdict) in Lists)
            {
                HashSet<long> here = expected.GetValueOrDefault(verdict) ?? [];
                Assert.True(here.Count == counts.GetProperty(count).GetInt32(), $"{shelf.Key}, {list}: {counts} and {here.Count}");
                Assert.Equal(here.Order(), (await Ids(shelf.Key, list, cart, here.Count)).Order());
                listed += verdict == Verdict.NotJudged ? 0 : here.Count;
            }
        }

        Assert.True(listed > 2_000, $"only {listed} articles meet this cart");
    }

    /// <summary>The verdict of the part in a slot, by the public report alone: the worst of its joints, and at least needs measuring where its maker has to be asked.</summary>
    private static Verdict Plain(FitReport report, Slot slot)
    {
        Verdict worst = report.Findings.Where(f => f.Joint!.Slots.Contains(slot)).Select(f => f.Verdict).DefaultIfEmpty(Verdict.NotJudged).Max();
        HashSet<(Slot, string)> ofJoints = [.. report.Findings.SelectMany(f => f.Measurements).Select(m => (m.Slot, m.Field))];
        bool isAsked = report.ToMeasure.Any(m => m.What.Slot == slot && !ofJoints.Contains((slot, m.What.Field)));
        return isAsked && worst < Verdict.NeedsMeasuring ? Verdict.NeedsMeasuring : worst;
    }

    private async Task<List<long>> Ids(Slot slot, string list, string cart, int count)
    {
        List<long> ids = [];
        for (int page = 1; ids.Count < count; page++)
        {
            JsonElement rows = (await shop.Json($"/api/parts/{slot.Key}?{cart}&list={list}&size=10000&page={page}")).GetProperty("rows");
            Assert.True(rows.GetArrayLength() > 0, $"{slot}, {list}: page {page} of {count} rows is empty");
            ids.AddRange(rows.EnumerateArray().Select(r => r.GetProperty("number").GetInt64()));
        }

        return ids;
    }

    /// <summary>A cart with the first article of each name, the best first, and the same build.</summary>
    private async Task<(Build Build, string Parts)> Filled(string frame, string wanted)
    {
        Build build = Build.From((Frame)PartText.Read(Slot.Frame, frame));
        string parts = "";
        foreach (string one in wanted.Split("; "))
        {
            string slot = one[..one.IndexOf(' ', StringComparison.Ordinal)];
            long number = await First(slot, one[(slot.Length + 1)..], $"frame={Uri.EscapeDataString(frame)}{parts}");
            parts += $"&part={slot}.{number}";
            build = build.With(PartText.Read(Slot.Find(slot)!, await Text(number)), Slot.Find(slot)!);
        }

        return (build, parts);
    }

    private async Task<long> First(string slot, string name, string cart)
    {
        foreach ((string list, _, _) in Lists)
        {
            JsonElement rows = (await shop.Json($"/api/parts/{slot}?{cart}&list={list}&size=10000")).GetProperty("rows");
            if (rows.EnumerateArray().FirstOrDefault(r => r.GetProperty("name").GetString()!.StartsWith(name, StringComparison.Ordinal)) is { ValueKind: JsonValueKind.Object } row)
            {
                return row.GetProperty("number").GetInt64();
            }
        }

        throw new InvalidOperationException($"there is no {slot} '{name}' that goes");
    }

    private async Task<string> Text(long article)
    {
        await using SqliteConnection connection = await Open();
        await using SqliteCommand command = connection.CreateCommand();
        command.CommandText = """SELECT s."Text" FROM article a JOIN spec s ON s."Id" = a."SpecId" WHERE a."Id" = $id""";
        command.Parameters.AddWithValue("$id", article);
        return Convert.ToString(await command.ExecuteScalarAsync(), CultureInfo.InvariantCulture)!;
    }

    /// <summary>Every different part with each place for which the shop sells it, and the numbers of its articles.</summary>
    private async Task<List<(long Spec, Slot Slot, Part Part, long[] Articles)>> Stock()
    {
        await using SqliteConnection connection = await Open();
        await using SqliteCommand command = connection.CreateCommand();
        command.CommandText =
            """
            SELECT s."Id", f."Slot", s."Slot", s."Text", a."Id"
            FROM article a JOIN spec s ON s."Id" = a."SpecId" JOIN part_fit f ON f."SpecId" = s."Id" AND f."Joint" = ''
            """;
        await using SqliteDataReader reader = await command.ExecuteReaderAsync();
        Dictionary<(long Spec, string Slot), (Part Part, List<long> Articles)> specs = [];
        while (await reader.ReadAsync())
        {
            (long, string) key = (reader.GetInt64(0), reader.GetString(1));
            if (!specs.TryGetValue(key, out (Part Part, List<long> Articles) spec))
            {
                specs[key] = spec = (PartText.Read(Slot.Find(reader.GetString(2))!, reader.GetString(3)), []);
            }

            spec.Articles.Add(reader.GetInt64(4));
        }

        return [.. specs.Select(s => (s.Key.Spec, Slot.Find(s.Key.Slot)!, s.Value.Part, s.Value.Articles.ToArray()))];
    }

    private async Task<SqliteConnection> Open()
    {
        SqliteConnection connection = new($"Data Source={shop.File};Mode=ReadOnly;Pooling=False");
        await connection.OpenAsync();
        return connection;
    }
}
