using Lugwork.Browser;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Chromium))]

namespace Lugwork.Browser;

/// <summary>The browser of the system, without a screen. Nothing is downloaded: where there is none, its tests are skipped.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private const string Variable = "LUGWORK_CHROMIUM";
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser"];

    /// <summary>Its sandbox does not run as root.</summary>
    private static readonly string[] Arguments =
    [
        .. Environment.UserName == "root" ? ["--no-sandbox"] : Array.Empty<string>(), "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-dev-shm-usage",
    ];

    private readonly SemaphoreSlim _starting = new(1, 1);
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    /// <summary>A page in a visit of its own, of which every error of the console is kept.</summary>
    public async Task<Visit> Visit(Uri address, int width = 1_200, int height = 900, ColorScheme colours = ColorScheme.Light)
    {
        string? program = Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } named ? named : Places.FirstOrDefault(File.Exists);
        Assert.SkipWhen(program is null || !File.Exists(program), $"no Chromium: not at {string.Join(", ", Places)}, and {Variable} names none");
        await _starting.WaitAsync();
        try
        {
            _playwright ??= await Playwright.CreateAsync();
            _browser ??= await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = program, Headless = true, Args = Arguments });
        }
        finally
        {
            _starting.Release();
        }

        IBrowserContext context = await _browser.NewContextAsync(new()
        {
            BaseURL = address.ToString(),
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = colours,
            HasTouch = width < 600,
            Locale = "en-GB",
        });
        context.SetDefaultTimeout(60_000);
        Assertions.SetDefaultExpectTimeout(30_000);
        return new(context, await context.NewPageAsync());
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
        _starting.Dispose();
    }
}

/// <summary>One visitor.</summary>
public sealed class Visit : IAsyncDisposable
{
    private readonly IBrowserContext _context;

    public Visit(IBrowserContext context, IPage page)
    {
        _context = context;
        Page = page;
        page.Console += (_, message) =>
        {
            // A status of 400 is told by the browser as well; it is what the test asks for.
            if (message.Type == "error" && !message.Text.Contains("status of 4", StringComparison.Ordinal))
            {
                Errors.Add(message.Text);
            }
        };
        page.PageError += (_, error) => Errors.Add(error);
        page.Dialog += async (_, dialog) =>
        {
            Errors.Add("a dialog came up: " + dialog.Message);
            await dialog.DismissAsync();
        };
    }

    public IPage Page { get; }

    public List<string> Errors { get; } = [];

    public async ValueTask DisposeAsync() => await _context.DisposeAsync();
}
