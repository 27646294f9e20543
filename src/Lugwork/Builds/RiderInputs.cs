namespace Lugwork;

/// <summary>Inputs of load and use.</summary>
internal static partial class JointInputs
{
    private const int Masses = 4;

    private const string LoadMeasure = "The maker's figure for rider and luggage, in the manual or on the part; where a smaller one is printed for the rider alone, that one; \"none\" if the maker prints none for either.";

    private const string RiderMeasure = "The maker's figure for the rider, in the manual or on the part; \"none\" if the maker prints none.";

    private const string SystemMeasure = "The maker's figure for rider, luggage and bicycle together; \"none\" if the maker prints none.";

    private const string UseMeasure = "The condition of ASTM F2043 that the part's maker names, by number or by its sign; \"none\" if it names none. Read the maker's words too: the numbers changed between editions, and another list of categories is not this one.";

    public static JointInput MassOfRider => Massed<Rider>(Slot.Rider, "mass", "mass of the rider", p => p.Mass, "Scales, dressed to ride, with shoes, helmet and all that is worn or carried on the body.");

    public static JointInput MassWithLuggage => Massed<Rider>(Slot.Rider, "massWithLuggage", "rider with luggage", p => p.MassWithLuggage, "Weigh the packed bags, bottles and tools and add the rider; \"none\" where the bicycle carries nothing.");

    public static JointInput MassOfSystem => Massed<Rider>(Slot.Rider, "systemMass", "rider, luggage and bicycle", p => p.SystemMass, "Weigh the bicycle as it is ridden, hung from a scale, and add rider and luggage.");

    public static JointInput UseOfRider => Input<Rider, UseCategory>(Slot.Rider, "use", "what the bicycle is ridden on", p => p.Use, "The hardest riding that you mean to do, by the conditions of ASTM F2043: paved 1, gravel and drops to 15 cm 2, rough trails and drops to 61 cm 3, to 122 cm 4, beyond 5.");

    public static JointInput LoadLimitOfFrame => Massed<Frame>(Slot.Frame, "loadLimit", "frame's limit for rider and luggage", p => p.LoadLimit, LoadMeasure);

    public static JointInput SystemLimitOfFrame => Massed<Frame>(Slot.Frame, "systemLimit", "frame's limit for everything", p => p.SystemLimit, SystemMeasure);

    public static JointInput UseOfFrame => Input<Frame, UseCategory>(Slot.Frame, "use", "what the frame is made for", p => p.Use, UseMeasure);

    public static JointInput LoadLimitOfFork => Massed<Fork>(Slot.Fork, "loadLimit", "fork's limit for rider and luggage", p => p.LoadLimit, LoadMeasure);

    public static JointInput SystemLimitOfFork => Massed<Fork>(Slot.Fork, "systemLimit", "fork's limit for everything", p => p.SystemLimit, SystemMeasure);

    public static JointInput UseOfFork => Input<Fork, UseCategory>(Slot.Fork, "use", "what the fork is made for", p => p.Use, UseMeasure);

    public static JointInput RiderLimitOfBar => Massed<Handlebar>(Slot.Handlebar, "riderLimit", "handlebar's limit for the rider", p => p.RiderLimit, RiderMeasure);

    public static JointInput SystemLimitOfBar => Massed<Handlebar>(Slot.Handlebar, "systemLimit", "handlebar's limit for everything", p => p.SystemLimit, SystemMeasure);

    public static JointInput UseOfBar => Input<Handlebar, UseCategory>(Slot.Handlebar, "use", "what the handlebar is made for", p => p.Use, UseMeasure);

    public static JointInput RiderLimitOfStem => Massed<Stem>(Slot.Stem, "riderLimit", "stem's limit for the rider", p => p.RiderLimit, RiderMeasure);

    public static JointInput SystemLimitOfStem => Massed<Stem>(Slot.Stem, "systemLimit", "stem's limit for everything", p => p.SystemLimit, SystemMeasure);

    public static JointInput UseOfStem => Input<Stem, UseCategory>(Slot.Stem, "use", "what the stem is made for", p => p.Use, UseMeasure);

    public static JointInput RiderLimitOfPost => Massed<Seatpost>(Slot.Seatpost, "riderLimit", "seatpost's limit for the rider", p => p.RiderLimit, RiderMeasure);

    public static JointInput SystemLimitOfPost => Massed<Seatpost>(Slot.Seatpost, "systemLimit", "seatpost's limit for everything", p => p.SystemLimit, SystemMeasure);

    public static JointInput UseOfPost => Input<Seatpost, UseCategory>(Slot.Seatpost, "use", "what the seatpost is made for", p => p.Use, UseMeasure);

    public static JointInput LoadLimitOfWheel(Slot slot) => Massed<Wheel>(slot, "loadLimit", "wheel's limit for rider and luggage", p => p.LoadLimit, LoadMeasure);

    public static JointInput SystemLimitOfWheel(Slot slot) => Massed<Wheel>(slot, "systemLimit", "wheel's limit for everything", p => p.SystemLimit, SystemMeasure);

    public static JointInput UseOfWheel(Slot slot) => Input<Wheel, UseCategory>(slot, "use", "what the wheel is made for", p => p.Use, UseMeasure);

    private static OwnInput<TPart, Load> Massed<TPart>(Slot slot, string field, string called, Func<TPart, Known<Load>> get, string measure)
        where TPart : Part => new OwnInput<TPart, Load>(slot, field, called, get, measure)
        {
            Lists = () => [],
            Family = Masses,
            IsLength = true,
            IsMass = true,
            Shows = Load.Written,
        };
}
