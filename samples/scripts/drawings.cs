#:package Lugwork@1.0.0-rc.1
// Two drawings of a build file, to scale: the post in the seat tube, and the rear hub with the line of the chain. They are written as seatpost.svg and rear-hub.svg.
using Lugwork;
using Lugwork.Drawing;

Build build = BuildFile.Read(args is [var path, ..] ? File.ReadAllText(path) : """
    {
      "name": "Steel frame with a donor's parts",
      "parts": {
        "frame": { "name": "steel frame", "rear": "135 QR", "seatTube": "27.2", "seatTubeOutside": "31.8", "leastInsertion": "80", "mostInsertion": "210", "chainstay": "440" },
        "seatpost": { "name": "post of the donor", "diameter": "26.8", "length": "350", "mark": "75" },
        "rearWheel": { "name": "wheel of the donor", "hub": "135 QR", "body": "HG-M" },
        "cassette": { "pattern": "HG-9", "smallestSprocket": "11", "largestSprocket": "32" },
        "crankset": { "chainline": "gravel-2x", "largestRing": "46" }
      }
    }
    """);

foreach ((string file, LineDrawing drawing) in new[] { ("seatpost.svg", Drawings.Seatpost(build)), ("rear-hub.svg", Drawings.RearHub(build)) })
{
    File.WriteAllText(file, drawing.ToSvg());
    Console.WriteLine($"{file}: {drawing.Title}, {drawing.Scale}");
    foreach (DrawnDimension dimension in drawing.Dimensions)
    {
        Console.WriteLine($"  {dimension}");
    }
}
