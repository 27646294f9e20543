using Lugwork.Catalogues;
namespace Lugwork.Databases;
internal static class Probe
{
    public static int Run()
    {
        Random random = new(1);
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame))
        {
            Joint[] joints = [.. JointTable.All.Where(j => j.Slots.Length == 2 && j.Slots.Contains(slot) && j.Slots.Contains(Slot.Frame))];
            var by = FitRelations.DecidedByCheck(slot);
            Console.WriteLine($"{slot.Key}: {string.Join("; ", joints.Select(j => $"{j.Id}{(by.Contains(j) ? " CHECK" : "")}{(j.IsOnlyWhereLooked ? " seen" : "")} [{string.Join(",", j.Inputs.Select(i => $"{i.Slot.Key}.{i.Field}{(i.IsLength ? "#" : $"({i.Domain.Length})")}"))}]"))}");
        }
        return 0;
    }
}
