using System.Diagnostics;
using System.Globalization;
using System.Reflection;

namespace Lugwork.Mutation;

/// <summary>The process that runs tests, asked line by line: it is ended and started again where a change never comes to an end or brings it down.</summary>
internal static class Worker
{
    /// <summary>Rows of a theory that take so many milliseconds are one test.</summary>
    private const long OneTest = 500;

    public static int Serve(string[] folders, int cases)
    {
        TestBench.Share(folders);
        TextReader asked = Console.In;
        TextWriter said = Console.Out;
        Console.SetOut(TextWriter.Null);
        while (asked.ReadLine() is { } line)
        {
            string[] words = line.Split('\t');
            // A thread of its own leaves nothing behind on this one that would hold the bench.
            Thread thread = new(
                () =>
                {
                    switch (words[0])
                    {
                        case "list":
                            using (TestBench bench = new(folders, -1))
                            {
                                said.WriteLine(string.Join('\t', bench.Classes(words.Length > 1)));
                            }

                            break;
                        case "watch":
                            Watch(folders, words[1], [.. words.Skip(2)], cases, said);
                            break;
                        default:
                            said.WriteLine(Run(folders, int.Parse(words[1], CultureInfo.InvariantCulture), words.AsSpan()[2..], cases, said));
                            break;
                    }
                },
                64 << 20);
            thread.Start();
            thread.Join();
            said.Flush();
            GC.Collect();
        }

        return 0;
    }

    /// <summary>Each test of a class with nothing changed: name, milliseconds, whether it passed, and what it came by.</summary>
    private static void Watch(string[] folders, string name, HashSet<string> without, int cases, TextWriter said)
    {
        using TestBench bench = new(folders, -1);
        foreach (MethodInfo method in TestRun.Of(bench.Class(name)))
        {
            // A long theory is several tests, each of some rows: of one that goes through all joints a change is seen by few.
            for (int from = 0, next; from >= 0 && !without.Contains(Named(method, from, -1)); from = next)
            {
                said.WriteLine("at\t" + Named(method, from, -1));
                said.Flush();
                TimeSpan start = Spent();
                string how = "passed";
                next = -1;
                try
                {
                    next = TestRun.Run(method, cases, from, milliseconds: OneTest);
                }
                catch (Exception e)
                {
                    how = "failed " + (e.InnerException ?? e).Message.ReplaceLineEndings(" ").Replace('\t', ' ');
                }

                long milliseconds = (long)(Spent() - start).TotalMilliseconds;
                said.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Named(method, from, next)}\t{milliseconds}\t{how}\t{string.Join(' ', bench.Seen())}"));
            }
        }

        said.WriteLine("end");
    }

    /// <summary>What this process was given of the machine.</summary>
    private static TimeSpan Spent()
    {
        using Process self = Process.GetCurrentProcess();
        return self.TotalProcessorTime;
    }

    private static string Named(MethodInfo method, int from, int next) =>
        from == 0 && next < 0 ? method.Name : string.Create(CultureInfo.InvariantCulture, $"{method.Name}#{from}-{(next < 0 ? "" : next)}");

    /// <summary>The tests in turn until one fails, each told before it runs.</summary>
    private static string Run(string[] folders, int number, ReadOnlySpan<string> tests, int cases, TextWriter said)
    {
        using TestBench bench = new(folders, number);
        foreach (string test in tests)
        {
            said.WriteLine("at\t" + test);
            said.Flush();
            int dot = test.LastIndexOf('.');
            try
            {
                string[] words = test[(dot + 1)..].Split('#', '-');
                TestRun.Run(
                    TestRun.Of(bench.Class(test[..dot])).First(m => m.Name == words[0]),
                    cases,
                    words.Length > 1 ? int.Parse(words[1], CultureInfo.InvariantCulture) : 0,
                    words.Length > 1 && words[2].Length > 0 ? int.Parse(words[2], CultureInfo.InvariantCulture) : int.MaxValue);
            }
            catch (Exception)
            {
                return "found\t" + test;
            }
        }

        return "survived";
    }
}
