using Lugwork.Workshop;
using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Answers;
using Lugwork.Catalogues;
using Lugwork.Reading;
using Lugwork.Tests.Docs;

namespace Lugwork.Tests.Architecture;

/// <summary>The same input gives the same bytes: in another process, culture, time zone, with one core, and without the compiler's tiers.</summary>
[Collection(nameof(AnswerPagesTests))]
public sealed class SameBytesTests
{
    private const string Into = "LUGWORK_BYTES_INTO";

    private static readonly Lazy<string> Here = new(Everything);

    public static TheoryData<string, string> Elsewhere => new()
    {
        { "Turkish, far east, one core", "LC_ALL=tr_TR.UTF-8 LANG=tr_TR.UTF-8 TZ=Pacific/Kiritimati DOTNET_PROCESSOR_COUNT=1" },
        { "Persian, far west, no tiers", "LC_ALL=fa_IR.UTF-8 LANG=fa_IR.UTF-8 TZ=Pacific/Pago_Pago DOTNET_PROCESSOR_COUNT=4 DOTNET_TieredCompilation=0" },
    };

    /// <summary>Writes what the library answers to a file where another test asks for that; a process of its own otherwise says only that there is much.</summary>
    [Fact]
    public void Everything_that_is_written_has_a_sum()
    {
        string told = Here.Value;
        Assert.True(told.Split('\n').Length > 250, $"{told.Split('\n').Length} texts");
        if (Environment.GetEnvironmentVariable(Into) is { Length: > 0 } file)
        {
            File.WriteAllText(file, $"{CultureInfo.CurrentCulture.Name} {Environment.ProcessorCount} {TimeZoneInfo.Local.BaseUtcOffset}\n{told}");
        }
    }

    [Theory]
    [MemberData(nameof(Elsewhere))]
    public async Task It_is_the_same_elsewhere(string name, string variables)
    {
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        ProcessStartInfo start = new(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet", [typeof(SameBytesTests).Assembly.Location, "--filter-method", $"{typeof(SameBytesTests).FullName}.{nameof(Everything_that_is_written_has_a_sum)}"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment[Into] = file;
        foreach (string[] variable in variables.Split(' ').Select(v => v.Split('=')))
        {
            start.Environment[variable[0]] = variable[1];
        }

        try
        {
            using Process process = Process.Start(start)!;
            Task<string> wrong = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
            string said = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            Assert.True(process.ExitCode == 0 && File.Exists(file), $"{name}: {said}{await wrong}");
            string[] there = (await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken)).Split('\n', 2);

            // It was elsewhere indeed.
            Assert.StartsWith(variables[7..12].Replace('_', '-') + " ", there[0], StringComparison.Ordinal);
            Assert.Equal(Here.Value, there[1]);
        }
        finally
        {
            File.Delete(file);
        }
    }

    /// <summary>A line for each text: what it is, and the sum of its bytes.</summary>
    private static string Everything()
    {
        StringBuilder told = new();
        foreach (string path in Files("samples/FrameUp/builds").Concat(Files("tests/Lugwork.Tests/Builds/Whole").Where(f => Path.GetFileName(f)[0] is >= '0' and <= '9')))
        {
            Build build = BuildFile.Read(File.ReadAllText(path));
            string name = Path.GetFileName(path);
            FitReport report = build.Check();
            WorkPlan plan = build.WorkPlan();
            Add($"{name} file", BuildFile.Write(build));
            Add($"{name} report", report.ToString());
            Add($"{name} report file", ReportFile.Write(report));
            Add($"{name} reasons", string.Join('\n', report.Findings.Select(f => f.Explain())));
            Add($"{name} needs", string.Join('\n', build.Needs().SelectMany(n => n.Rows)));
            Add($"{name} plan", plan.ToString());
            Add($"{name} plan page", plan.ToHtml());
            Add($"{name} plan file", plan.ToJson());
            Add($"{name} relation", string.Join('\n', FitRelations.NeedsOf(7, build, Slot.RearWheel)));
        }

        foreach ((string name, Action _) in AnswerList.All)
        {
            Add(name, Snippets.Printed("samples/Answers/" + name));
        }

        Add("shop list", ShopList());
        Add("snapshot", Convert.ToHexString(Snapshot()));
        Add("schema", BuildFile.Schema);
        Add("standards", StandardsPage.Write());
        return told.ToString();

        void Add(string name, string text) => told.Append(name).Append(' ').Append(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))).Append('\n');
    }

    private static IEnumerable<string> Files(string folder) => Directory.GetFiles(Path.Combine([DocPage.Root, .. folder.Split('/')]), "*.json").Order(StringComparer.Ordinal);

    /// <summary>Read in parallel on as many cores as there are.</summary>
    private static string ShopList()
    {
        StringBuilder told = new();
        IEnumerable<SpecRow> rows = File.ReadLines(Path.Combine(DocPage.Root, "samples", "SpecToNeeds", "sheets", "shop-list.csv")).Skip(1).Select(l => l.Split(';')).Select(r => new SpecRow(Slot.Find(r[1]), r[2], r[0]));
        SpecSummary summary = SpecReader.Read(rows, r => told.Append(r.Row.Id).Append(' ').AppendLine(r.Line.ToString()));
        return told.Append(summary).ToString();
    }

    private static byte[] Snapshot()
    {
        PartCatalogue catalogue = new();
        catalogue.Load(Files("samples/FrameUp/builds").SelectMany((f, at) => BuildFile.Read(File.ReadAllText(f)) is var build ? Slot.All.Where(s => build[s] is not null).Select(s => new CatalogueRow(at, s, build[s]!)) : []));
        using MemoryStream stream = new();
        CatalogueFile.Write(catalogue.View, stream, CancellationToken.None);
        return stream.ToArray();
    }
}
