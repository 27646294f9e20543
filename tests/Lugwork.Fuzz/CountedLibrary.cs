using SharpFuzz;

namespace Lugwork.Fuzz;

/// <summary>Puts a counter at every branch of the library that lies beside this program, once for each build.</summary>
internal static class CountedLibrary
{
    public static void Make()
    {
        string library = Path.Combine(AppContext.BaseDirectory, "Lugwork.dll");
        string changed = $"{library}.{Environment.ProcessId}";
        File.Copy(library, changed, overwrite: true);
        try
        {
            Fuzzer.Instrument(changed, static _ => true, Options.Value);
            File.Move(changed, library, overwrite: true);
        }
        catch (InstrumentationException)
        {
            // An earlier run has done it.
        }
        finally
        {
            File.Delete(changed);
        }
    }
}
