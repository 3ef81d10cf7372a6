using Orlop.Bench.Networks;
using Orlop.Bench.Reviews;

switch (args)
{
    case ["network"]:
        return NetworkBench.Run(Console.Out);
    case ["review"]:
        return ReviewBench.Run(Console.Out);
    default:
        Console.Error.WriteLine("Usage: Orlop.Bench network | review");
        return 2;
}
