using System.Diagnostics;
using System.Globalization;
using System.Reflection;

namespace Lugwork.Mutation;

/// <summary>The process that runs tests, asked line by line: it is ended and started again where a change never comes to an end or brings it down.</summary>
internal static class Worker
{
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
                                said.WriteLine(string.Join('\t', bench.Classes()));
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
        foreach (MethodInfo method in TestRun.Of(bench.Class(name)).Where(m => !without.Contains(m.Name)))
        {
            said.WriteLine("at\t" + method.Name);
            said.Flush();
            long start = Stopwatch.GetTimestamp();
            string how = "passed";
            try
            {
                TestRun.Run(method, cases);
            }
            catch (Exception e)
            {
                how = "failed " + (e.InnerException ?? e).Message.ReplaceLineEndings(" ").Replace('\t', ' ');
            }

            long milliseconds = (long)Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            said.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{method.Name}\t{milliseconds}\t{how}\t{string.Join(' ', bench.Seen())}"));
        }

        said.WriteLine("end");
    }

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
                TestRun.Run(TestRun.Of(bench.Class(test[..dot])).First(m => m.Name == test[(dot + 1)..]), cases);
            }
            catch (Exception)
            {
                return "found\t" + test;
            }
        }

        return "survived";
    }
}
