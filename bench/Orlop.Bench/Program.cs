using Orlop.Bench.Hulls;
using Orlop.Bench.Networks;
using Orlop.Bench.Reviews;

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
    default:
        Console.Error.WriteLine("Usage: Orlop.Bench network | review | float | hull");
        return 2;
}
