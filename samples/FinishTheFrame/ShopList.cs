using System.Globalization;
using Lugwork;
using Lugwork.Planning;
using UnitsNet;

namespace FinishTheFrame;

/// <summary>An invented shop list: the same seed makes the same rows, prices and masses.</summary>
internal static class ShopList
{
    /// <summary>A kind of article: what it is called, where it goes, about what it costs and weighs, and its fields; of what stands in braces one is drawn.</summary>
    private sealed record Article(string Name, decimal Price, double Grams, Func<string, Part> Read, string Fields, params Slot[] Slots);

    private static readonly Article[] Articles =
    [
        new("Fork", 95, 1_050, Fork.Read, "material {steel,carbon}; front {F100-12,F100-QR9,F100-15}; brake {PM-160,IS-front,FM-front-140}; largest rotor {160,180}; steerer shape straight 1-1/8; steerer kind threadless; steerer material {steel,aluminium}; axle thread {M12x1.5,M12x1.0,none}; axle length {127,125,none}; largest tyre {45-622,37-622}; axle to crown {390,395,410}; travel none; lips kept; bosses none; brake hole none", Slot.Fork),
        new("Front wheel", 80, 980, Wheel.Read, "hub {F100-12,F100-QR9,F100-15}; ends {swappable,fixed}; rotor fixing {six-bolt,center-lock}; beadSeat {622,584}; innerWidth {19,21,23}; rimType TC; valve hole 6.5; rim depth 24; bed hole 9; rim material aluminium", Slot.FrontWheel),
        new("Rear wheel", 110, 1_200, Wheel.Read, "hub {R142-12,R135-QR,R148-12}; ends {swappable,fixed}; body {HG-L,HG-M,XD}; rotor fixing {six-bolt,center-lock}; beadSeat {622,584}; innerWidth {19,21,23}; rimType TC; valve hole 6.5; rim depth 24; bed hole 9; rim material aluminium", Slot.RearWheel),
        new("Tyre", 28, 480, Tyre.Read, "{35-622,40-622,42-622,47-622,47-584}; folding; clincher", Slot.FrontTyre, Slot.RearTyre),
        new("Cassette", 32, 380, Cassette.Read, "pattern {HG-9,HG-8,HG-11-road,XD}", Slot.Cassette),
        new("Rotor", 17, 120, Rotor.Read, "{140,160,180,203}; {six-bolt,center-lock}; lockring internal; carrier none; thickness 1.8; least thickness 1.5", Slot.FrontRotor, Slot.RearRotor),
        new("Caliper", 42, 170, Caliper.Read, "{post,flat}; type {disc-cable-road,disc-cable-off-road}; fluid none; thickest rotor 1.9; thinnest rotor 1.5", Slot.FrontCaliper, Slot.RearCaliper),
        new("Seatpost", 26, 290, Seatpost.Read, "{25.4,26.8,27.2,30.9,31.6} x 350; mark {75,100}; insertion 120; rails {7-round,7x9}; material aluminium", Slot.Seatpost),
        new("Axle", 18, 60, ThruAxle.Read, "{M12x1.5,M12x1.0}; length {125,127,163,172}", Slot.FrontThruAxle, Slot.RearThruAxle),
        new("Headset", 30, 110, Headset.Read, "{upper EC34/28.6; lower EC34/30,upper ZS44/28.6; lower ZS56/40}; threadless", Slot.Headset),
        new("Stem", 24, 150, Stem.Read, "28.6 clamp; bar {25.4,31.8,35}; material aluminium", Slot.Stem),
        new("Bar", 30, 300, Handlebar.Read, "{25.4,31.8,35}; grip {22.2,23.8}; material aluminium", Slot.Handlebar),
        new("Collar", 8, 25, SeatClamp.Read, "{28.6,31.8,34.9}", Slot.SeatClamp),
        new("Saddle", 35, 300, Saddle.Read, "{7-round,7x9}", Slot.Saddle),
        new("Bottom bracket", 27, 100, BottomBracket.Read, "shell {BSA 68-73,BB86}; takes {24,30}", Slot.BottomBracket),
        new("Crankset", 75, 800, Crankset.Read, "spindle {24-road,30}; pedals 9/16; rings {9,11,12}; largest ring {42,46,50}; chainline {gravel-2x,road-2x}", Slot.Crankset),
        new("Pedals", 22, 380, Pedals.Read, "9/16", Slot.Pedals),
        new("Chain", 16, 260, Chain.Read, "{9,10,11,12}", Slot.Chain),
        new("Derailleur", 38, 270, RearDerailleur.Read, "{M10-bolt,direct mount}; chain {9,11}; cable; pull {R,R11}", Slot.RearDerailleur),
        new("Brake lever", 19, 130, BrakeLever.Read, "pull {short,long}; fluid none", Slot.FrontBrakeLever, Slot.RearBrakeLever),
        new("Shifter", 25, 140, Shifter.Read, "cable; pull {R,R11}; spacing {9,11-close}; with derailleur allowed", Slot.RearShifter),
    ];

    /// <summary>Rows such as "Seatpost A-0412"; an article that goes to two places is offered for each, for the shop has more than one of it.</summary>
    public static IEnumerable<ChoiceOffer> Make(int rows, int seed)
    {
        uint state = (uint)seed;
        for (int i = 1; i <= rows; i++)
        {
            Article article = Articles[Draw(ref state, Articles.Length)];
            string name = string.Create(CultureInfo.InvariantCulture, $"{article.Name} {(char)('A' + Draw(ref state, 6))}-{i:0000}");
            Part part = article.Read(Drawn(article.Fields, ref state)) with { Name = name, Condition = Known<PartCondition>.Of(PartCondition.New) };
            decimal price = decimal.Floor(article.Price * (60 + Draw(ref state, 160)) / 100) + 0.90m;
            Mass mass = Mass.FromGrams(Math.Round(article.Grams * (80 + Draw(ref state, 50)) / 100));
            foreach (Slot slot in article.Slots)
            {
                yield return new(name, slot, part) { Price = new Price(price, "EUR"), Mass = mass };
            }
        }
    }

    /// <summary>One of each pair of braces; a comma parts the choices.</summary>
    private static string Drawn(string fields, ref uint state)
    {
        string text = fields;
        while (text.IndexOf('{', StringComparison.Ordinal) is >= 0 and int open)
        {
            int close = text.IndexOf('}', StringComparison.Ordinal);
            string[] choices = text[(open + 1)..close].Split(',');
            text = text[..open] + choices[Draw(ref state, choices.Length)] + text[(close + 1)..];
        }

        return text;
    }

    private static int Draw(ref uint state, int below)
    {
        state = unchecked((state * 1_664_525u) + 1_013_904_223u);
        return (int)((state >> 16) % (uint)below);
    }
}
