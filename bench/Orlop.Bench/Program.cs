using Orlop.Bench.Energy;
using Orlop.Bench.Heat;
using Orlop.Bench.Hulls;
using Orlop.Bench.Networks;
using Orlop.Bench.Reviews;
using Orlop.Bench.Ways;

switch (args)
{
    case ["network"]:
        return NetworkBench.Run(Console.Out);
    case ["review"]:
        return ReviewBench.Run(Console.Out);
    case ["float"]:
        return FloatBench.Run(Console.Out);
    case ["hull"]:
        return HullBench.Run(Console.Out);
    case ["energy"]:
        return EnergyBench.Run(Console.Out);
    case ["heat"]:
        return HeatBench.Run(Console.Out);
    case ["ways"]:
        return WaysBench.Run(Console.Out);
    default:
        Console.Error.WriteLine("Usage: Orlop.Bench network | review | float | hull | energy | heat | ways");
        return 2;
}
