using System.Text.Json;
using Lugwork.Browser;
using Microsoft.Data.Sqlite;

[assembly: AssemblyFixture(typeof(Shop))]

namespace Lugwork.Browser;

/// <summary>One shop for all tests, with the whole invented stock in a file of its own.</summary>
public sealed class Shop : IAsyncLifetime
{
    /// <summary>A frame as an address says it.</summary>
    public const string Frame = "kind gravel; rear R142-12; seatTube 27.2; shell BSA-68; headTubeUpper IS42; headTubeLower IS52; rearBrake FM-rear-140; largestRearTyre 50-622; seatTubeOutside 31.8; leastInsertion 80; mostInsertion 230; longestFork 400; mostForkTravel none; largestRearRotor 160";

    private readonly Lazy<string> _whole;
    private ShopProcess[] _processes = [];

    public Shop() => _whole = new(Whole);

    public string Folder { get; } = Directory.CreateTempSubdirectory("lugwork-shop").FullName;

    public ShopProcess Process => _processes[0];

    /// <summary>Another process on the same file, started together with the first.</summary>
    public ShopProcess Second => _processes[1];

    public HttpClient Client => Process.Client;

    public string File => Path.Combine(Folder, "shop.db");

    public static string Frames => Uri.EscapeDataString(Frame);

    public async ValueTask InitializeAsync() =>
        _processes = await Task.WhenAll(Enumerable.Range(0, 2).Select(_ => ShopProcess.Start($"Data Source={File}", ("Shop__RequestsPerMinute", "1000000"))));

    public async ValueTask DisposeAsync()
    {
        foreach (ShopProcess process in _processes)
        {
            await process.DisposeAsync();
        }

        Directory.Delete(Folder, recursive: true);
    }

    /// <summary>A second file with the same stock. The first is copied once by its engine, so that it is whole, whoever else reads or writes.</summary>
    public string Copy(string name)
    {
        string copy = Path.Combine(Folder, name);
        System.IO.File.Copy(_whole.Value, copy);
        return copy;
    }

    private string Whole()
    {
        string whole = Path.Combine(Folder, "whole.db");
        using SqliteConnection from = new($"Data Source={File};Mode=ReadOnly;Pooling=False");
        using SqliteConnection to = new($"Data Source={whole};Pooling=False");
        from.Open();
        from.BackupDatabase(to);
        return whole;
    }

    public async Task<JsonElement> Json(string address) => await Json(Client, address);

    public static async Task<JsonElement> Json(HttpClient client, string address)
    {
        using HttpResponseMessage answer = await client.GetAsync(address);
        string text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.IsSuccessStatusCode, $"{(int)answer.StatusCode} {text}");
        return JsonDocument.Parse(text).RootElement;
    }
}
