#region json
using System.Text.Json;
using Lugwork.BottomBrackets;
using Lugwork.Seating;
#endregion
using Lugwork;

namespace Answers;

/// <summary>Interface values in JSON and as text.</summary>
internal static class ValuesAsText
{
    #region json

    internal sealed record Order(SeatpostDiameter Post, Shell? Shell);
    #endregion

    public static void Json()
    {
        #region json

        Order order = JsonSerializer.Deserialize<Order>("""{ "Post": "27.2 mm", "Shell": "BSA 68" }""")!;
        Console.WriteLine(JsonSerializer.Serialize(order));
        #endregion
    }

    public static void Refused()
    {
        #region refused
        bool isRead = Frame.TryRead("rear 12x142; seat tube twenty-seven; shell BSA 42", out Frame? frame, out var problems);
        Console.WriteLine(isRead);
        foreach (SpecProblem problem in problems)
        {
            Console.WriteLine(problem);
        }
        #endregion

        _ = frame;
    }
}
