-- Load for wrk: every answer is looked at. wrk -t2 -c16 -d20s -s samples/ShopWeb/load.lua http://127.0.0.1:5000
-- An answer is torn where it holds articles of a delivery that is not its own, or not the whole of it, or fewer rows than it counts.
local frame = "rear%20R142-12;seatTube%2027.2;leastInsertion%2080;mostInsertion%20230;kind%20gravel;largestRearTyre%2050-622"
local paths = {
  "/api/parts/seatpost?size=10000&frame=" .. frame,
  "/api/parts/rearTyre?frame=" .. frame,
  "/api/needs?frame=" .. frame,
  "/api/seatposts/27.2",
  "/build?frame=" .. frame,
  "/parts/rearWheel?frame=" .. frame,
}
local at, threads = 0, {}

function setup(thread)
  table.insert(threads, thread)
end

function init()
  wrong, torn, seen = 0, 0, 0
end

function request()
  at = at % #paths + 1
  return wrk.format("GET", paths[at])
end

function response(status, _, body)
  if status ~= 200 then
    wrong = wrong + 1
    return
  end
  local version, slot = body:match('^{"version":(%d+),"slot":"(%w+)"')
  if slot ~= "seatpost" then
    return
  end
  seen = seen + 1
  local rows, delivered, strange = 0, 0, 0
  for delivery in body:gmatch('"delivery":(%d+)') do
    rows = rows + 1
    if delivery ~= "0" then
      delivered = delivered + 1
      strange = strange + (delivery == version and 0 or 1)
    end
  end
  local counted = tonumber(body:match('"counts":{"fits":(%d+)'))
  if strange > 0 or rows ~= counted or delivered ~= (version == "0" and 0 or 200) then
    torn = torn + 1
  end
end

function done(summary)
  local all = { wrong = 0, torn = 0, seen = 0 }
  for _, thread in ipairs(threads) do
    for name in pairs(all) do
      all[name] = all[name] + thread:get(name)
    end
  end
  local failed = summary.errors.connect + summary.errors.read + summary.errors.write + summary.errors.timeout
  print(string.format("%d answers, %d refused or failed, %d lists looked at, %d torn", summary.requests, all.wrong + failed, all.seen, all.torn))
end
